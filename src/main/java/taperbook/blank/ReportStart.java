package taperbook.blank;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import taperbook.i18n.Texts;
import taperbook.input.plan.ReportKey;
import taperbook.quantity.Unit;

/** The start file of a report: all keys, and a draft article. */
public final class ReportStart {
  private final StartUnits units;

  /** Creates a start file with these units. */
  public ReportStart(StartUnits units) {
    this.units = units;
  }

  /**
   * Returns the text of the report's file.
   *
   * @param session name of the reported session
   * @param rangeTests names of the range tests it uses; may be empty
   */
  public String text(String session, List<String> rangeTests) {
    Map<ReportKey, String> written = new EnumMap<>(ReportKey.class);
    written.put(ReportKey.TITLE, "");
    written.put(ReportKey.SESSION, session);
    written.put(ReportKey.UNITS, units.distance().symbol());
    if (!rangeTests.isEmpty()) {
      written.put(ReportKey.RANGE_TEST, String.join(", ", rangeTests));
    }
    List<String> lines = new ArrayList<>();
    lines.add("---");
    lines.add(Texts.of("blank.report_start.lines_that_begin_with_are"));
    for (ReportKey key : ReportKey.values()) {
      lines.add("# " + key.meaning());
      lines.add(written.containsKey(key) ? line(key, written) : unused(key));
    }
    lines.add("---");
    lines.addAll(article(rangeTests));
    return String.join("\n", lines) + "\n";
  }

  private static String line(ReportKey key, Map<ReportKey, String> written) {
    return (key.words() + ": " + written.getOrDefault(key, "")).strip();
  }

  private static String unused(ReportKey key) {
    String example = key.example();
    return example.startsWith("- ")
        ? "#" + key.words() + ":\n#  " + example
        : "#" + key.words() + ": " + example;
  }

  private List<String> article(List<String> rangeTests) {
    String distance = units.distance() == Unit.MILE ? "100_mi" : "100_km";
    List<String> lines = new ArrayList<>();
    if (!rangeTests.isEmpty()) {
      lines.add(
          Texts.of("blank.report_start.adding_100_took", units.distance().symbol(), distance));
    }
    lines.add(Texts.of("blank.report_start.power_reached_both_peak_power"));
    lines.add(Texts.of("blank.report_start.both_peak_hold_time_from"));
    return lines;
  }
}
