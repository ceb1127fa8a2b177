package taperbook.metric.quality;

import java.util.ArrayList;
import java.util.List;
import taperbook.format.NumberFormatter;
import taperbook.metric.recording.EventFinder;
import taperbook.metric.recording.Recording;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Event;
import taperbook.session.Caveat;
import taperbook.session.Caveat.Kind;
import taperbook.session.Channel;

/** Caveats of the events of a session: interruptions and displays not read. */
final class EventCaveats {
  private final NumberFormatter formatter;
  private final boolean powerRead;

  private EventCaveats(Recording recording) {
    this.formatter = recording.formatter();
    this.powerRead = recording.power().isPresent();
  }

  static List<Caveat> of(Recording recording) {
    EventCaveats events = new EventCaveats(recording);
    List<Caveat> caveats = new ArrayList<>();
    EventFinder.interruptions(recording.session())
        .forEach(e -> caveats.add(new Caveat(Kind.INTERRUPTION, events.interruption(e))));
    EventFinder.notRead(recording.session())
        .forEach(e -> caveats.add(new Caveat(Kind.GAPS, events.notRead(e))));
    return caveats;
  }

  private String interruption(Event event) {
    String at =
        event
            .charge()
            .map(c -> " at " + formatter.value(c, Unit.PERCENT) + " of charge")
            .orElse("");
    return "Charging was interrupted"
        + at
        + ": it stood still for "
        + amount(event.seconds())
        + ", beginning "
        + amount(event.start())
        + " after plugging in"
        + noted(event.note())
        + ". Times and averages across it include it and say so; where they are given without it,"
        + " what the power lost by climbing again is not taken off."
        + (powerRead ? " The fitted segments leave its readings out." : "");
  }

  private String notRead(Event event) {
    return "From "
        + moment(event.start())
        + " to "
        + moment(event.end())
        + " after plugging in the "
        + event.channel().map(EventCaveats::display).orElse("display")
        + " was not read while other displays were"
        + noted(event.note())
        + ".";
  }

  private static String display(Channel channel) {
    return channel == Channel.SOC ? "state of charge" : channel.columnName();
  }

  /** Returns the tester's note as part of a sentence; empty if there is none. */
  static String noted(String note) {
    return note.isEmpty() ? "" : ", where the tester noted \u201c" + note + "\u201d";
  }

  /** Returns the tester's note within a gap as the end of a sentence; empty if there is none. */
  static String inGap(String note) {
    return note.isEmpty() ? "" : " beyond what the tester noted: \u201c" + note + "\u201d";
  }

  private String amount(Interval seconds) {
    return formatter.between(seconds, Unit.SECOND);
  }

  private String moment(Interval second) {
    return formatter.value(Estimate.exactly(second.low()), Unit.SECOND);
  }
}
