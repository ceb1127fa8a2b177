package taperbook.input.mapping;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import taperbook.diagnostics.ProblemCode;
import taperbook.i18n.Texts;
import taperbook.input.cell.Grouping;
import taperbook.input.cell.NormalizedName;
import taperbook.input.cell.Suggestion;
import taperbook.input.csv.CsvLayout;
import taperbook.input.csv.SpreadsheetWorkbook;
import taperbook.input.csv.TextEncoding;

/** Parses the items of {@code columns.csv} about the external file as a whole. */
final class WholeFileItems {
  private static final String FILE = "file";
  private static final String ENCODING = "encoding";
  private static final String LEADING_LINES = "leading lines";
  private static final String ROWS_OF_UNITS = "rows of units";
  private static final String DELIMITER = "delimiter";
  private static final String DECIMAL = "decimal mark";
  private static final String THOUSANDS = "thousands mark";
  private static final String ZONE = "time zone";
  private static final String MISSING = "missing";
  static final List<String> ITEMS =
      List.of(
          FILE,
          ENCODING,
          LEADING_LINES,
          ROWS_OF_UNITS,
          DELIMITER,
          DECIMAL,
          THOUSANDS,
          ZONE,
          MISSING);

  private static final Map<String, Character> DELIMITERS =
      Map.of("comma", ',', ",", ',', "semicolon", ';', ";", ';', "tab", '\t');
  private static final Map<String, Character> DECIMALS =
      Map.of("point", '.', ".", '.', "comma", ',', ",", ',');
  private static final Map<String, TextEncoding> ENCODINGS =
      Map.of(
          "utf-8", TextEncoding.UTF_8,
          "utf-16", TextEncoding.UTF_16,
          "iso-8859-1", TextEncoding.LATIN_1,
          "latin-1", TextEncoding.LATIN_1,
          "windows-1252", TextEncoding.WINDOWS_1252);
  private static final Map<String, Grouping> GROUPINGS =
      Arrays.stream(Grouping.values()).collect(Collectors.toMap(Grouping::word, g -> g));
  private static final Set<String> NOT_READINGS =
      Set.of(ColumnMap.FILE_NAME, "conditions.csv", "range-test.csv", "legs.csv");

  private final ColumnMapItems sheet;

  WholeFileItems(ColumnMapItems sheet) {
    this.sheet = sheet;
  }

  /** Returns the properties; empty if one of the items is invalid. */
  Optional<ColumnMap.Whole> read() {
    Optional<String> file = file();
    Optional<Optional<TextEncoding>> encoding =
        choice(ENCODING, ENCODINGS, Texts.of("input.whole_file_items.utf_8_utf_16_iso"));
    Optional<Integer> leading = count(LEADING_LINES);
    Optional<Integer> units = count(ROWS_OF_UNITS);
    Optional<Optional<Character>> delimiter =
        choice(DELIMITER, DELIMITERS, Texts.of("input.whole_file_items.comma_semicolon_or_tab"));
    Optional<Optional<Character>> decimal =
        choice(DECIMAL, DECIMALS, Texts.of("input.whole_file_items.point_or_comma"));
    Optional<Optional<Grouping>> thousands =
        choice(
            THOUSANDS,
            GROUPINGS,
            Texts.of("input.whole_file_items.point_comma_space_or_apostrophe"));
    Optional<Optional<ZoneId>> zone = zone();
    if (file.isEmpty()
        || encoding.isEmpty()
        || leading.isEmpty()
        || units.isEmpty()
        || delimiter.isEmpty()
        || decimal.isEmpty()
        || thousands.isEmpty()
        || !marksDiffer(decimal.get(), thousands.get())
        || zone.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new ColumnMap.Whole(
            file.get(),
            new CsvLayout(
                leading.get(),
                units.get(),
                delimiter.get(),
                encoding.get().orElse(TextEncoding.UTF_8)),
            decimal.get().or(() -> thousands.get().flatMap(WholeFileItems::decimalBeside)),
            thousands.get(),
            zone.get(),
            marks(value(MISSING))));
  }

  /** Splits the marks of a missing value, which are separated by bars. */
  static Set<String> marks(String cell) {
    return Arrays.stream(cell.split("\\|"))
        .map(mark -> mark.strip().toLowerCase(Locale.ROOT))
        .filter(mark -> !mark.isEmpty())
        .collect(Collectors.toUnmodifiableSet());
  }

  private String value(String item) {
    return sheet.cell(item, ColumnMapItems.SOURCE);
  }

  private boolean isPresent(String item) {
    return sheet.present().contains(item);
  }

  private Optional<String> file() {
    if (!isPresent(FILE)) {
      return Optional.of(ColumnMap.DEFAULT_READINGS);
    }
    String name = value(FILE);
    if (name.matches("[^/\\\\]+\\.csv") && !NOT_READINGS.contains(name)) {
      return Optional.of(name);
    }
    if (SpreadsheetWorkbook.isName(name)) {
      refuse(
          FILE,
          Texts.of("input.whole_file_items.name_of_csv_file_this"),
          Texts.of("input.whole_file_items.save_its_sheet_as_csv"));
      return Optional.empty();
    }
    refuse(
        FILE,
        Texts.of("input.whole_file_items.name_of_csv_file_in"),
        Texts.of("input.whole_file_items.write_its_name_or_take"));
    return Optional.empty();
  }

  private Optional<Integer> count(String item) {
    if (!isPresent(item)) {
      return Optional.of(0);
    }
    if (value(item).matches("[0-9]{1,4}")) {
      return Optional.of(Integer.parseInt(value(item)));
    }
    refuse(
        item,
        Texts.of("input.whole_file_items.whole_number_from_0_to"),
        Texts.of("input.whole_file_items.count_them_and_write_number"));
    return Optional.empty();
  }

  /** If point or comma is the thousands separator, the other is the decimal mark. */
  private static Optional<Character> decimalBeside(Grouping thousands) {
    return switch (thousands) {
      case POINT -> Optional.of(',');
      case COMMA -> Optional.of('.');
      case SPACE, APOSTROPHE -> Optional.empty();
    };
  }

  private boolean marksDiffer(Optional<Character> decimal, Optional<Grouping> thousands) {
    boolean differ =
        decimal.isEmpty()
            || thousands
                .flatMap(WholeFileItems::decimalBeside)
                .filter(d -> !d.equals(decimal.get()))
                .isEmpty();
    if (!differ) {
      refuse(
          THOUSANDS,
          Texts.of("input.whole_file_items.another_mark_than_decimal_mark"),
          Texts.of("input.common.correct_one_of_two"));
    }
    return differ;
  }

  private <T> Optional<Optional<T>> choice(String item, Map<String, T> meanings, String words) {
    if (!isPresent(item)) {
      return Optional.of(Optional.empty());
    }
    Optional<T> meant = Optional.ofNullable(meanings.get(NormalizedName.of(value(item))));
    if (meant.isPresent()) {
      return Optional.of(meant);
    }
    refuse(item, words, Texts.of("input.whole_file_items.write_word_or_take_row"));
    return Optional.empty();
  }

  private Optional<Optional<ZoneId>> zone() {
    if (!isPresent(ZONE)) {
      return Optional.of(Optional.empty());
    }
    try {
      return Optional.of(Optional.of(ZoneId.of(value(ZONE))));
    } catch (DateTimeException e) {
      refuse(
          ZONE,
          Texts.of("input.whole_file_items.name_of_time_zone_in"),
          Suggestion.remedy(
              value(ZONE),
              ZoneId.getAvailableZoneIds().stream().sorted().toList(),
              Texts.of("input.whole_file_items.write_name_of_zone_whose")));
      return Optional.empty();
    }
  }

  private void refuse(String item, String expected, String remedy) {
    sheet.report(ProblemCode.VALUE_NOT_UNDERSTOOD, item, ColumnMapItems.SOURCE, expected, remedy);
  }
}
