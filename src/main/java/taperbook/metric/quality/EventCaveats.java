package taperbook.metric.quality;

import java.util.ArrayList;
import java.util.List;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
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

  private Message interruption(Event event) {
    String at =
        event
            .charge()
            .map(
                c ->
                    Texts.of("metric.event_caveats.at_of_charge", formatter.value(c, Unit.PERCENT)))
            .orElse("");
    return Message.of(
        "metric.event_caveats.charging_was_interrupted_it_stood",
        at,
        amount(event.seconds()),
        amount(event.start()),
        noted(event.note()),
        powerRead ? Texts.of("metric.event_caveats.fitted_segments_leave_its_readings") : "");
  }

  private Message notRead(Event event) {
    return Message.of(
        "metric.event_caveats.from_to_after_plugging_in",
        moment(event.start()),
        moment(event.end()),
        event.channel().map(EventCaveats::display).orElse("display"),
        noted(event.note()));
  }

  private static String display(Channel channel) {
    return channel == Channel.SOC
        ? Texts.of("metric.common.state_of_charge")
        : channel.columnName();
  }

  /** Returns the tester's note as part of a sentence; empty if there is none. */
  static String noted(String note) {
    return note.isEmpty() ? "" : Texts.of("metric.event_caveats.where_tester_noted", note);
  }

  /** Returns the tester's note within a gap as the end of a sentence; empty if there is none. */
  static String inGap(String note) {
    return note.isEmpty() ? "" : Texts.of("metric.event_caveats.beyond_what_tester_noted", note);
  }

  private String amount(Interval seconds) {
    return formatter.between(seconds, Unit.SECOND);
  }

  private String moment(Interval second) {
    return formatter.value(Estimate.exactly(second.low()), Unit.SECOND);
  }
}
