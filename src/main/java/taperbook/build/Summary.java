package taperbook.build;

import java.util.ArrayList;
import java.util.List;
import taperbook.format.NumberFormatter;
import taperbook.result.CrossCheck;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;

/** The most important numbers, shown to the tester without opening the report. */
final class Summary {
  private final ReportResult result;
  private final NumberFormatter wording;

  Summary(ReportResult result) {
    this.result = result;
    this.wording = new NumberFormatter(result.plan().style());
  }

  /** Returns the measured headline numbers as the report prints them. */
  List<ReportBuild.Printed> printed() {
    return result.main().numbers().headline().stream()
        .filter(n -> n.withheld().isEmpty())
        .map(n -> new ReportBuild.Printed(n.label(), value(n), intervals(n)))
        .toList();
  }

  List<String> lines() {
    List<ReportNumber> shown = result.main().numbers().headline();
    int labels = widest(shown.stream().map(ReportNumber::label).toList());
    int values = widest(shown.stream().map(this::value).toList());
    List<String> lines = new ArrayList<>();
    for (ReportNumber number : shown) {
      lines.add(
          "  "
              + padded(number.label(), labels)
              + "  "
              + padded(value(number), values)
              + "  "
              + spread(number));
    }
    lines.add("  " + counts());
    return lines;
  }

  private String value(ReportNumber number) {
    return number.withheld().isPresent() ? "withheld" : wording.value(number);
  }

  private String spread(ReportNumber number) {
    return wording.spread(number).orElseGet(() -> number.withheld().orElseThrow());
  }

  /** Returns the possible printed forms of an interval. */
  private List<String> intervals(ReportNumber number) {
    List<String> ways = new ArrayList<>(List.of(spread(number), wording.range(number)));
    wording.between(number).ifPresent(ways::add);
    return ways;
  }

  private String counts() {
    long withheld =
        result.main().numbers().all().stream().filter(n -> n.withheld().isPresent()).count();
    long differing =
        result.main().checks().stream()
            .filter(c -> c.outcome() instanceof CrossCheck.Compared compared && !compared.agrees())
            .count();
    return result.main().numbers().all().size()
        + " numbers, "
        + withheld
        + " withheld; "
        + result.main().checks().size()
        + " cross-checks, "
        + differing
        + " differing; "
        + result.main().caveats().size()
        + " caveats";
  }

  private static int widest(List<String> texts) {
    return texts.stream().mapToInt(String::length).max().orElse(0);
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(width - text.length());
  }
}
