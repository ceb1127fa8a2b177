package taperbook.format;

import taperbook.i18n.Texts;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Event;
import taperbook.session.Channel;

/** Formats the events of a session. */
public final class EventText {
  private final NumberFormatter wording;

  public EventText(NumberFormatter wording) {
    this.wording = wording;
  }

  /** Returns the time of the event: a moment, or its start and end. */
  public String when(Event event) {
    String start = moment(event.start());
    return event.kind() == Event.Kind.NOTE
        ? start
        : Texts.of("event.span", start, moment(event.end()));
  }

  private String moment(Interval second) {
    return second.width() > 0
        ? wording.between(second, Unit.SECOND)
        : wording.value(Estimate.exactly(second.low()), Unit.SECOND);
  }

  /** Returns a description of the event with the tester's note. */
  public String what(Event event) {
    String kind =
        switch (event.kind()) {
          case INTERRUPTION -> Texts.of("event.interruption");
          case NOT_READ ->
              Texts.of("event.not_read", event.channel().map(Channel::columnName).orElse(""));
          case NOTE -> "";
        };
    if (kind.isEmpty() || event.note().isEmpty()) {
      return kind + event.note();
    }
    return Texts.of("event.with_note", kind, event.note());
  }

  /** Returns the state of charge displayed at that time, or a dash. */
  public String charge(Event event) {
    return event.charge().map(c -> wording.value(c, Unit.PERCENT)).orElse("\u2013");
  }
}
