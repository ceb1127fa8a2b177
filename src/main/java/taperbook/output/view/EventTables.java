package taperbook.output.view;

import java.util.ArrayList;
import java.util.List;
import taperbook.format.EventText;
import taperbook.format.SessionNames;
import taperbook.output.data.RowRuns;
import taperbook.plan.ReportPlan;
import taperbook.quantity.SocWindow;
import taperbook.result.Event;
import taperbook.result.Metric;
import taperbook.result.Numbers;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;

/** The events of the sessions, and the numbers with and without interruptions. */
final class EventTables {
  /** Maximum number of events; further ones are in the readings only. */
  private static final int MOST = 40;

  private final ReportResult result;
  private final NumberViews views;
  private final EventText eventText;

  /** An event; the letter of the session is empty for the reported one. */
  record EventRow(
      String number, String letter, String when, String charge, String what, String row) {}

  EventTables(NumberViews views) {
    this.result = views.result();
    this.views = views;
    this.eventText = new EventText(views.formatter());
  }

  /** Returns the events of the reported session, numbered as in its chart. */
  List<EventRow> events() {
    return events(result.main(), "");
  }

  /** Returns the events of the compared sessions, each with its letter. */
  List<EventRow> ofOthers() {
    List<EventRow> rows = new ArrayList<>();
    for (int i = 1; i < result.sessions().size(); i++) {
      rows.addAll(events(result.sessions().get(i), SessionNames.letter(i)));
    }
    return rows;
  }

  private List<EventRow> events(SessionResult session, String letter) {
    List<EventRow> rows = new ArrayList<>();
    for (Event event : session.events().subList(0, Math.min(MOST, session.events().size()))) {
      rows.add(
          new EventRow(
              "" + (rows.size() + 1),
              letter,
              eventText.when(event),
              eventText.charge(event),
              eventText.what(event),
              String.join(", ", RowRuns.lines(event.rows()).values())));
    }
    return rows;
  }

  /**
   * Returns the total interruption, and each requested number that includes an interruption
   * followed by the same without it.
   */
  List<NumberView> interrupted() {
    Numbers numbers = result.main().numbers();
    List<NumberView> rows = new ArrayList<>();
    numbers.find("interruption_time").ifPresent(n -> rows.add(views.view(n)));
    ReportPlan plan = result.plan();
    List<String> ids = new ArrayList<>();
    plan.wishes().distances().forEach(d -> ids.add(plan.timeToAddId(d)));
    plan.wishes().socMarks().forEach(mark -> ids.add("time_to_soc_" + mark));
    for (SocWindow window : plan.wishes().windows()) {
      ids.add("time_soc_" + window.idPart());
      ids.add("average_power_" + window.idPart());
    }
    for (String id : ids) {
      numbers
          .find(Metric.withoutInterruptions(id))
          .ifPresent(
              without -> {
                rows.add(views.view(result.main(), id));
                rows.add(views.view(without));
              });
    }
    return rows;
  }
}
