package taperbook.chart.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.chart.model.Chart;
import taperbook.chart.model.FigureText;
import taperbook.format.EventText;
import taperbook.i18n.Texts;
import taperbook.result.Event;

/** The events of a session as marks of a time chart: numbered, with a key below. */
final class EventMarks {
  /** Maximum number of marked events; the table lists all. */
  private static final int MOST = 12;

  private final List<Event> events;
  private final EventText eventText;

  EventMarks(FigureText texts) {
    this.events = texts.result().main().events();
    this.eventText = new EventText(texts.formatter());
  }

  /** Returns one flag per event within the axis, numbered as in the table of events. */
  List<Chart.Flag> flags(double lastMinute) {
    List<Chart.Flag> flags = new ArrayList<>();
    for (int i = 0; i < Math.min(MOST, events.size()); i++) {
      double minute = events.get(i).start().middle() / 60;
      if (minute >= 0 && minute <= lastMinute) {
        flags.add(new Chart.Flag(minute, i + 1));
      }
    }
    return flags;
  }

  /** Returns the key. */
  Optional<String> sentence() {
    if (events.isEmpty()) {
      return Optional.empty();
    }
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < Math.min(MOST, events.size()); i++) {
      Event event = events.get(i);
      parts.add(Texts.of("event.key", i + 1, eventText.when(event), eventText.what(event)));
    }
    if (events.size() > MOST) {
      parts.add(Texts.of("event.more", events.size() - MOST));
    }
    return Optional.of(Texts.of("event.list", String.join("; ", parts)));
  }
}
