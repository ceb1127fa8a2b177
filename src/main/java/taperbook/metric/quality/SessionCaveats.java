package taperbook.metric.quality;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
import taperbook.metric.bounds.GapRule;
import taperbook.metric.recording.EventFinder;
import taperbook.metric.recording.Recording;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.session.Caveat;
import taperbook.session.Caveat.Kind;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.DisplayRounding;
import taperbook.session.Fact;
import taperbook.session.Facts;
import taperbook.session.HowKnown;
import taperbook.session.RowsWritten;
import taperbook.session.Trace;

/**
 * Caveats of a charging session, derived from its conditions and readings. Missing conditions are
 * caveats too. Thresholds are common practice without a source.
 */
public final class SessionCaveats {
  /** Temperature from which a battery is usually warm enough to follow its curve. */
  private static final double WARM_BATTERY_CELSIUS = 25;

  /** Duration below which preconditioning may not have warmed the whole battery. */
  private static final double SHORT_PRECONDITIONING_SECONDS = 15 * 60;

  private final Recording recording;
  private final Facts<ConditionItem> facts;
  private final NumberFormatter formatter;
  private final List<Caveat> caveats = new ArrayList<>();

  private SessionCaveats(Recording recording) {
    this.recording = recording;
    this.facts = recording.session().conditions();
    this.formatter = recording.formatter();
  }

  public static List<Caveat> of(Recording recording) {
    SessionCaveats all = new SessionCaveats(recording);
    all.batteryTemperature();
    all.preconditioning();
    all.startingSoc();
    all.powerAtStart();
    all.caveats.addAll(PlateauCaveats.of(recording));
    all.stationShared();
    all.odometer();
    all.ambient();
    all.howRead();
    all.places();
    all.caveats.addAll(ReadingCaveats.of(recording));
    all.gaps();
    all.caveats.addAll(EventCaveats.of(recording));
    all.channels();
    all.remarks();
    all.caveats.addAll(recording.session().caveats());
    all.caveats.sort(Comparator.comparing(Caveat::kind));
    return all.caveats;
  }

  private void add(Kind kind, Message sentence) {
    caveats.add(new Caveat(kind, sentence));
  }

  private void add(Kind kind, Message fact, Message meaning) {
    caveats.add(new Caveat(kind, fact, meaning));
  }

  private String amount(Estimate estimate, Unit unit) {
    return formatter.value(estimate, unit);
  }

  private void batteryTemperature() {
    Optional<Estimate> start = facts.amount(ConditionItem.BATTERY_TEMPERATURE_AT_START);
    if (start.isEmpty()) {
      add(
          Kind.BATTERY_TEMPERATURE,
          Message.of("metric.session_caveats.battery_s_temperature_at_plugging"));
      return;
    }
    String opening =
        Texts.of(
            "metric.session_caveats.battery_was_at_at_plugging", amount(start.get(), Unit.CELSIUS));
    Estimate below = Estimate.exactly(WARM_BATTERY_CELSIUS).minus(start.get());
    if (Math.rint(below.value()) >= 1) {
      add(
          Kind.BATTERY_TEMPERATURE,
          Message.of(
              "metric.session_caveats.below_from_which_on_battery",
              opening,
              how(ConditionItem.BATTERY_TEMPERATURE_AT_START),
              formatter.degrees(below),
              formatter.exactly(WARM_BATTERY_CELSIUS, Unit.CELSIUS)),
          Message.of("metric.session_caveats.cooler_it_is_further_and"));
    } else if (isEstimated(ConditionItem.BATTERY_TEMPERATURE_AT_START)) {
      add(Kind.BATTERY_TEMPERATURE, Message.of("metric.session_caveats.by_estimate", opening));
    }
  }

  private void preconditioning() {
    Optional<String> done = facts.text(ConditionItem.PRECONDITIONED);
    if (done.isEmpty()) {
      add(Kind.PRECONDITIONING, Message.of("metric.session_caveats.it_is_not_known_whether"));
      return;
    }
    if (done.get().equals("no")) {
      add(
          Kind.PRECONDITIONING,
          Message.of("metric.session_caveats.battery_had_not_been_preconditioned"));
      return;
    }
    Optional<Estimate> time = facts.amount(ConditionItem.PRECONDITIONING_TIME);
    if (time.isEmpty()) {
      add(
          Kind.PRECONDITIONING,
          Message.of("metric.session_caveats.car_had_preconditioned_its_battery"));
    } else if (time.get().value() < SHORT_PRECONDITIONING_SECONDS) {
      add(
          Kind.PRECONDITIONING,
          Message.of(
              "metric.session_caveats.preconditioning_began_only_before_plugging",
              amount(time.get(), Unit.SECOND)));
    }
  }

  private void startingSoc() {
    recording
        .soc()
        .ifPresent(
            soc -> {
              String start = recording.percent(soc.firstValue(), soc);
              add(
                  Kind.STARTING_SOC,
                  Message.of("metric.session_caveats.session_began_at", start),
                  Message.of("metric.session_caveats.session_that_begins_elsewhere_meets"));
              if (soc.firstSecond() > 0) {
                add(
                    Kind.STARTING_SOC,
                    Message.of(
                        "metric.session_caveats.state_of_charge_was_first",
                        amount(
                            Estimate.around(soc.firstSecond(), soc.clockHalfStep()), Unit.SECOND)));
              }
            });
  }

  /**
   * Adds a caveat if power already flows in the first row, as elapsed time is often started late.
   */
  private void powerAtStart() {
    recording
        .power()
        .filter(p -> p.firstSecond() <= 0 && p.firstValue() > p.halfStep())
        .ifPresent(
            p ->
                add(
                    Kind.CLOCK,
                    Message.of(
                        "metric.session_caveats.first_row_shows",
                        amount(Estimate.around(p.firstValue(), p.halfStep()), Unit.KILOWATT)),
                    Message.of("metric.session_caveats.power_was_flowing_by_then")));
  }

  private void stationShared() {
    Optional<String> shared = facts.text(ConditionItem.STATION_SHARED);
    if (shared.isEmpty()) {
      add(
          Kind.STATION_SHARED,
          Message.of("metric.session_caveats.it_is_not_known_whether_another"));
    } else if (shared.get().equals("yes")) {
      add(Kind.STATION_SHARED, Message.of("metric.session_caveats.another_car_drew_on_same"));
    }
  }

  private void odometer() {
    if (facts.amount(ConditionItem.ODOMETER).isEmpty()) {
      add(Kind.ODOMETER, Message.of("metric.session_caveats.odometer_reading_is_not_known"));
    }
  }

  private void ambient() {
    Optional<Estimate> ambient = facts.amount(ConditionItem.AMBIENT_TEMPERATURE);
    if (ambient.isEmpty()) {
      add(
          Kind.AMBIENT_TEMPERATURE,
          Message.of("metric.session_caveats.air_temperature_during_session_is"));
      return;
    }
    String opening =
        Texts.of("metric.session_caveats.air_was_at", amount(ambient.get(), Unit.CELSIUS));
    MildWeather.below(ambient.get())
        .ifPresent(
            far ->
                add(
                    Kind.AMBIENT_TEMPERATURE,
                    Message.of(
                        "metric.common.colder_than",
                        opening,
                        formatter.degrees(far),
                        MildWeather.words(formatter)),
                    Message.of("metric.session_caveats.colder_it_is_more_battery")));
    MildWeather.above(ambient.get())
        .ifPresent(
            far ->
                add(
                    Kind.AMBIENT_TEMPERATURE,
                    Message.of(
                        "metric.common.hotter_than",
                        opening,
                        formatter.degrees(far),
                        MildWeather.words(formatter)),
                    Message.of("metric.session_caveats.hotter_it_is_more_cooling")));
  }

  private void howRead() {
    List<Message> sentences = new ArrayList<>();
    String from = facts.text(ConditionItem.READ_FROM).orElse("");
    switch (from) {
      case "" -> sentences.add(Message.of("metric.session_caveats.it_is_not_known_what"));
      case "by eye" ->
          sentences.add(Message.of("metric.session_caveats.readings_were_taken_by_eye"));
      case "film" ->
          sentences.add(Message.of("metric.session_caveats.readings_were_taken_by_hand"));
      default -> {
        // A log adds no reading uncertainty of its own.
      }
    }
    if (recording.soc().isPresent()
        && recording.session().displayRounding() == DisplayRounding.NOT_KNOWN) {
      sentences.add(Message.of("metric.session_caveats.how_display_of_state_of"));
    }
    if (recording.soc().isPresent() && recording.session().rowsWritten() == RowsWritten.NOT_KNOWN) {
      sentences.add(
          Message.of(
              "metric.session_caveats.whether_rows_were_written_as",
              ConditionItem.ROWS_WRITTEN.words()));
    }
    facts
        .amount(ConditionItem.DISPLAY_LAG)
        .filter(lag -> lag.bounds().high() > 0)
        .ifPresent(lag -> sentences.add(late(lag)));
    for (ConditionItem item :
        List.of(ConditionItem.STATION_RATED_POWER, ConditionItem.AMBIENT_TEMPERATURE)) {
      if (isEstimated(item)) {
        sentences.add(Message.of("metric.session_caveats.is_estimate", capitalised(item.words())));
      }
    }
    if (!sentences.isEmpty()) {
      add(Kind.READINGS, Message.join(sentences));
    }
  }

  /** Describes which numbers a common lag of the displays affects. */
  private Message late(Estimate lag) {
    return Message.of(
        "metric.session_caveats.displays_follow_by_power_and",
        amount(lag, Unit.SECOND),
        how(ConditionItem.DISPLAY_LAG));
  }

  /** Adds caveats where power and energy were measured away from the battery. */
  private void places() {
    boolean powerAtStation = isAt(ConditionItem.POWER_MEASURED_AT, "station");
    boolean energyAtStation = isAt(ConditionItem.ENERGY_COUNTED_AT, "station");
    boolean energyAtInlet = isAt(ConditionItem.ENERGY_COUNTED_AT, "inlet");
    List<Message> sentences = new ArrayList<>();
    if (powerAtStation && isAt(ConditionItem.ENERGY_COUNTED_AT, "battery")) {
      sentences.add(
          apart(
              "station", "battery", Texts.of("metric.session_caveats.losses_and_what_heating_or")));
    } else if (powerAtStation && energyAtInlet) {
      sentences.add(
          apart(
              "station", "inlet", Texts.of("metric.session_caveats.losses_of_station_and_cable")));
    } else if (energyAtStation && isAt(ConditionItem.POWER_MEASURED_AT, "car")) {
      sentences.add(
          apart(
              "car",
              "station",
              Texts.of("metric.session_caveats.losses_and_perhaps_what_heating")));
    }
    if ((powerAtStation || energyAtStation || energyAtInlet)
        && facts.known(ConditionItem.HEATING_INCLUDED).isEmpty()) {
      sentences.add(Message.of("metric.session_caveats.whether_power_and_energy_include"));
    }
    if (!sentences.isEmpty()) {
      add(Kind.ENERGY_COUNTER, Message.join(sentences));
    }
  }

  private static Message apart(String power, String energy, String between) {
    return Message.of("metric.session_caveats.power_was_measured_at_and", power, energy, between);
  }

  private boolean isAt(ConditionItem item, String place) {
    return facts.text(item).filter(place::equals).isPresent();
  }

  private void gaps() {
    recording.soc().or(recording::power).ifPresent(this::widestGap);
  }

  private void widestGap(Trace trace) {
    int widest = -1;
    for (int i = 0; i + 1 < trace.size(); i++) {
      double gap = trace.second(i + 1) - trace.second(i);
      if (widest < 0 || gap > trace.second(widest + 1) - trace.second(widest)) {
        widest = i;
      }
    }
    if (widest < 0 || !GapRule.isWide(trace, widest)) {
      return;
    }
    double gap = trace.second(widest + 1) - trace.second(widest);
    add(
        Kind.GAPS,
        Message.of(
            "metric.session_caveats.widest_gap_between_readings_is",
            amount(Estimate.around(gap, 2 * trace.clockHalfStep()), Unit.SECOND),
            amount(Estimate.around(trace.second(widest), trace.clockHalfStep()), Unit.SECOND),
            EventCaveats.inGap(
                EventFinder.notes(
                    recording.session(), trace.second(widest), trace.second(widest + 1)))));
  }

  private void channels() {
    List<String> missing = new ArrayList<>();
    for (Channel channel : List.of(Channel.SOC, Channel.POWER, Channel.ENERGY_ADDED)) {
      if (recording.session().trace(channel).isEmpty()) {
        missing.add(
            channel == Channel.SOC
                ? Texts.of("metric.common.state_of_charge")
                : channel.columnName());
      }
    }
    if (!missing.isEmpty()) {
      add(
          Kind.CHANNELS,
          Message.of(
              "metric.session_caveats.not_recorded_what_needs_it", String.join(", ", missing)));
    }
  }

  private void remarks() {
    facts
        .text(ConditionItem.REMARKS)
        .ifPresent(
            remark -> add(Kind.REMARK, Message.of("metric.session_caveats.of_session", remark)));
  }

  private boolean isEstimated(ConditionItem item) {
    return facts.known(item).map(Fact::howKnown).filter(HowKnown.ESTIMATED::equals).isPresent();
  }

  private String how(ConditionItem item) {
    return isEstimated(item) ? Texts.of("metric.session_caveats.by_estimate_2") : "";
  }

  private static String capitalised(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
