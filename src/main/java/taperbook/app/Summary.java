package taperbook.app;

import java.util.ArrayList;
import java.util.List;
import taperbook.model.CrossCheck;
import taperbook.model.ReportNumber;
import taperbook.model.ReportResult;
import taperbook.words.Wording;

/** The few numbers that matter, for the tester to see without opening the report. */
final class Summary {
  private final ReportResult result;
  private final Wording wording;

  Summary(ReportResult result) {
    this.result = result;
    this.wording = new Wording(result.plan().style().units());
  }

  List<String> lines() {
    List<String> ids = new ArrayList<>();
    result.plan().wishes().distances().stream().map(result.plan()::timeToAddId).forEach(ids::add);
    ids.add("peak_power");
    ids.add("peak_hold_time");
    ids.add("time_soc_" + result.plan().wishes().windows().get(0).idPart());
    List<String> lines = new ArrayList<>();
    for (String id : ids) {
      result.main().numbers().find(id).ifPresent(number -> lines.add(line(number)));
    }
    long withheld =
        result.main().numbers().all().stream().filter(n -> n.withheld().isPresent()).count();
    long differing =
        result.main().checks().stream()
            .filter(c -> c.outcome() instanceof CrossCheck.Compared compared && !compared.agrees())
            .count();
    lines.add(
        "  "
            + result.main().numbers().all().size()
            + " numbers, "
            + withheld
            + " withheld; "
            + result.main().checks().size()
            + " cross-checks, "
            + differing
            + " differing; "
            + result.main().caveats().size()
            + " caveats");
    return lines;
  }

  private String line(ReportNumber number) {
    return "  " + number.label() + ": " + wording.outcome(number).replace('\u00a0', ' ');
  }
}
