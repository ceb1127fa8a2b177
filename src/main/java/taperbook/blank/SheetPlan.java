package taperbook.blank;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import taperbook.i18n.Texts;
import taperbook.input.KnownColumn;
import taperbook.input.KnownColumns;
import taperbook.output.pdf.RecordingSheet;
import taperbook.session.ConditionItem;
import taperbook.session.DisplayRounding;
import taperbook.session.Item;
import taperbook.session.ItemKind;
import taperbook.session.RangeItem;

/** The content of a recording sheet, from the same items and columns as the start files. */
public final class SheetPlan {
  // All other items are placed before the session, so that a new one cannot be omitted.
  private static final Set<ConditionItem> SESSION_AFTER =
      EnumSet.of(
          ConditionItem.PRICE_PER_KWH,
          ConditionItem.PRICE_PER_MINUTE,
          ConditionItem.SESSION_FEE,
          ConditionItem.CURRENCY,
          ConditionItem.READ_FROM,
          ConditionItem.REMARKS);
  private static final Set<RangeItem> DRIVE_AFTER =
      EnumSet.of(
          RangeItem.DISTANCE,
          RangeItem.DISTANCE_SOURCE,
          RangeItem.ODOMETER_CORRECTION,
          RangeItem.END_SOC,
          RangeItem.ENERGY_USED,
          RangeItem.CONSUMPTION_DISPLAYED,
          RangeItem.AVERAGE_SPEED,
          RangeItem.END_ELEVATION,
          RangeItem.REMARKS);

  private static final List<String> READINGS =
      List.of("elapsed", "soc", "power", "energy added", "battery temperature", "note");
  private static final int LEGS = 12;

  /** Number of rows without a mark, for jumps of power: as many as the page has room for. */
  private static final int SPARE = 3;

  private final StartUnits units;

  /** Creates sheets with these units. */
  public SheetPlan(StartUnits units) {
    this.units = units;
  }

  /** Returns the sheet of a kind. */
  public RecordingSheet sheet(SheetKind kind) {
    return kind == SheetKind.SESSION ? session() : rangeTest();
  }

  private RecordingSheet session() {
    return new RecordingSheet(
        Texts.of("blank.sheet_plan.recording_sheet_charging_session"),
        Texts.of("blank.sheet_plan.for_one_session_from_arriving"),
        SheetTexts.SESSION_CAUTIONS,
        stage(
            Texts.of("blank.sheet_plan.before_plugging_in"),
            SheetTexts.SESSION_BEFORE,
            ConditionItem.values(),
            SESSION_AFTER),
        SheetTexts.SESSION_DURING,
        new RecordingSheet.Table(
            Texts.of("blank.sheet_plan.readings"),
            Texts.of("blank.sheet_plan.what_counts_is_state_of"),
            heads(Texts.of("blank.sheet_plan.mark"), KnownColumns.readings(), READINGS),
            marks()),
        after(
            Texts.of("blank.sheet_plan.after_unplugging"),
            SheetTexts.SESSION_AFTER,
            SESSION_AFTER));
  }

  private RecordingSheet rangeTest() {
    return new RecordingSheet(
        Texts.of("blank.sheet_plan.recording_sheet_range_test"),
        Texts.of("blank.sheet_plan.for_one_drive_from_setting"),
        SheetTexts.DRIVE_CAUTIONS,
        stage(
            Texts.of("blank.sheet_plan.before_setting_off"),
            SheetTexts.DRIVE_BEFORE,
            RangeItem.values(),
            DRIVE_AFTER),
        SheetTexts.DRIVE_DURING,
        new RecordingSheet.Table(
            Texts.of("blank.sheet_plan.legs"),
            Texts.of("blank.sheet_plan.laps_or_stretches_between_stops"),
            heads(
                "",
                KnownColumns.legs(),
                KnownColumns.legs().stream().map(KnownColumn::name).toList()),
            Collections.nCopies(LEGS, "")),
        after(Texts.of("blank.sheet_plan.after_drive"), SheetTexts.DRIVE_AFTER, DRIVE_AFTER));
  }

  private RecordingSheet.Stage stage(
      String heading, List<String> checks, Item[] items, Set<? extends Item> later) {
    return new RecordingSheet.Stage(
        heading,
        checks,
        Arrays.stream(items)
            .filter(i -> !later.contains(i) && i.kind().form() != ItemKind.Form.MOMENT)
            .map(this::field)
            .toList());
  }

  private RecordingSheet.Stage after(
      String heading, List<String> checks, Set<? extends Item> items) {
    return new RecordingSheet.Stage(heading, checks, items.stream().map(this::field).toList());
  }

  private RecordingSheet.Field field(Item item) {
    ItemKind.Form form = item.kind().form();
    boolean choice = form == ItemKind.Form.WORD;
    boolean amount = form == ItemKind.Form.AMOUNT || form == ItemKind.Form.CORRECTION;
    return new RecordingSheet.Field(
        item.words(),
        hint(item),
        form == ItemKind.Form.PRICE ? item.kind().words().get(0) : StartUnits.name(units.of(item)),
        choice ? item.kind().words().stream().filter(SheetPlan::isMarked).toList() : List.of(),
        item.required(),
        amount);
  }

  /** Returns the part of an explanation before the semicolon: the rest is about the files. */
  private static String hint(Item item) {
    String explanation = item.explanation();
    int end = explanation.indexOf(';');
    return end < 0 ? explanation : explanation.substring(0, end) + ".";
  }

  /** Returns false for unknown values, which have no mark. */
  private static boolean isMarked(String word) {
    return !word.equals(DisplayRounding.NOT_KNOWN.words());
  }

  private List<RecordingSheet.Head> heads(
      String first, List<KnownColumn> known, List<String> names) {
    List<RecordingSheet.Head> heads = new ArrayList<>();
    if (!first.isEmpty()) {
      heads.add(new RecordingSheet.Head(first, ""));
    }
    known.stream()
        .filter(c -> names.contains(c.name()))
        .forEach(
            c ->
                heads.add(new RecordingSheet.Head(c.name(), StartUnits.name(units.of(c.units())))));
    return heads;
  }

  /**
   * Returns each five per cent where cars charge fast, start and end, and spare rows: common
   * practice, no source.
   */
  private static List<String> marks() {
    List<String> marks = new ArrayList<>();
    marks.add(Texts.of("blank.sheet_plan.start"));
    IntStream.iterate(10, m -> m <= 80, m -> m + 5).forEach(m -> marks.add(m + " %"));
    marks.add("90 %");
    marks.add("100 %");
    marks.addAll(Collections.nCopies(SPARE, ""));
    return marks;
  }
}
