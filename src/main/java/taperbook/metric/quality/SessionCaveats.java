package taperbook.metric.quality;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import taperbook.format.NumberFormatter;
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

  private void add(Kind kind, String sentence) {
    add(kind, sentence, "");
  }

  private void add(Kind kind, String fact, String meaning) {
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
          "The battery's temperature at plugging in is not known. A cold battery charges below its"
              + " usual curve until it is warm.");
      return;
    }
    String opening = "The battery was at " + amount(start.get(), Unit.CELSIUS) + " at plugging in";
    Estimate below = Estimate.exactly(WARM_BATTERY_CELSIUS).minus(start.get());
    if (Math.rint(below.value()) >= 1) {
      add(
          Kind.BATTERY_TEMPERATURE,
          opening
              + how(ConditionItem.BATTERY_TEMPERATURE_AT_START)
              + ", "
              + formatter.degrees(below)
              + " below the "
              + formatter.exactly(WARM_BATTERY_CELSIUS, Unit.CELSIUS)
              + " from which on a battery is taken to be warm enough.",
          "The cooler it is, the further and longer it charges below its curve.");
    } else if (isEstimated(ConditionItem.BATTERY_TEMPERATURE_AT_START)) {
      add(Kind.BATTERY_TEMPERATURE, opening + ", by an estimate.");
    }
  }

  private void preconditioning() {
    Optional<String> done = facts.text(ConditionItem.PRECONDITIONED);
    if (done.isEmpty()) {
      add(Kind.PRECONDITIONING, "It is not known whether the car had preconditioned its battery.");
      return;
    }
    if (done.get().equals("no")) {
      add(Kind.PRECONDITIONING, "The battery had not been preconditioned.");
      return;
    }
    Optional<Estimate> time = facts.amount(ConditionItem.PRECONDITIONING_TIME);
    if (time.isEmpty()) {
      add(
          Kind.PRECONDITIONING,
          "The car had preconditioned its battery, but for how long is not known.");
    } else if (time.get().value() < SHORT_PRECONDITIONING_SECONDS) {
      add(
          Kind.PRECONDITIONING,
          "Preconditioning began only "
              + amount(time.get(), Unit.SECOND)
              + " before plugging in, which may be too late to have warmed the battery through.");
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
                  "The session began at " + start + ".",
                  "A session that begins elsewhere meets another part of the curve: its minutes and"
                      + " miles differ even on the same car.");
              if (soc.firstSecond() > 0) {
                add(
                    Kind.STARTING_SOC,
                    "State of charge was first read "
                        + amount(
                            Estimate.around(soc.firstSecond(), soc.clockHalfStep()), Unit.SECOND)
                        + " after plugging in; what was added before is not counted as distance.");
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
                    "The first row shows "
                        + amount(Estimate.around(p.firstValue(), p.halfStep()), Unit.KILOWATT)
                        + ".",
                    "Power was flowing by then, so times count from that row; what passed between"
                        + " plugging in and it is not in them."));
  }

  private void stationShared() {
    Optional<String> shared = facts.text(ConditionItem.STATION_SHARED);
    if (shared.isEmpty()) {
      add(
          Kind.STATION_SHARED,
          "It is not known whether another car drew on the same station, which may lower the"
              + " power.");
    } else if (shared.get().equals("yes")) {
      add(
          Kind.STATION_SHARED,
          "Another car drew on the same station, which may have lowered the power.");
    }
  }

  private void odometer() {
    if (facts.amount(ConditionItem.ODOMETER).isEmpty()) {
      add(
          Kind.ODOMETER,
          "The odometer reading is not known, and with it how worn the battery may be.");
    }
  }

  private void ambient() {
    Optional<Estimate> ambient = facts.amount(ConditionItem.AMBIENT_TEMPERATURE);
    if (ambient.isEmpty()) {
      add(Kind.AMBIENT_TEMPERATURE, "The air temperature during the session is not known.");
      return;
    }
    String opening = "The air was at " + amount(ambient.get(), Unit.CELSIUS) + ", ";
    MildWeather.below(ambient.get())
        .ifPresent(
            far ->
                add(
                    Kind.AMBIENT_TEMPERATURE,
                    opening
                        + formatter.degrees(far)
                        + " colder than "
                        + MildWeather.words(formatter)
                        + ".",
                    "The colder it is, the more a battery may charge below the curve of mild"
                        + " weather."));
    MildWeather.above(ambient.get())
        .ifPresent(
            far ->
                add(
                    Kind.AMBIENT_TEMPERATURE,
                    opening
                        + formatter.degrees(far)
                        + " hotter than "
                        + MildWeather.words(formatter)
                        + ".",
                    "The hotter it is, the more cooling takes, and the sooner a battery may limit its"
                        + " power."));
  }

  private void howRead() {
    List<String> sentences = new ArrayList<>();
    String from = facts.text(ConditionItem.READ_FROM).orElse("");
    switch (from) {
      case "" -> sentences.add("It is not known what the readings were taken from.");
      case "by eye" ->
          sentences.add(
              "The readings were taken by eye, so no recording can settle a doubt about one.");
      case "film" ->
          sentences.add(
              "The readings were taken by hand from a film of the displays: rounded as displayed,"
                  + " and only as often as someone wrote them down.");
      default -> {
        // A log adds no reading uncertainty of its own.
      }
    }
    if (recording.soc().isPresent()
        && recording.session().displayRounding() == DisplayRounding.NOT_KNOWN) {
      sentences.add(
          "How the display of the state of charge rounds is not known: a true charge is stated for"
              + " rounding to the nearest step, down and up. Times and distances do not depend on"
              + " it.");
    }
    if (recording.soc().isPresent() && recording.session().rowsWritten() == RowsWritten.NOT_KNOWN) {
      sentences.add(
          "Whether rows were written as the display changed is not known: intervals allow for both,"
              + " and declaring "
              + ConditionItem.ROWS_WRITTEN.words()
              + " narrows them.");
    }
    facts
        .amount(ConditionItem.DISPLAY_LAG)
        .filter(lag -> lag.bounds().high() > 0)
        .ifPresent(lag -> sentences.add(late(lag)));
    for (ConditionItem item :
        List.of(ConditionItem.STATION_RATED_POWER, ConditionItem.AMBIENT_TEMPERATURE)) {
      if (isEstimated(item)) {
        sentences.add(capitalised(item.words()) + " is an estimate.");
      }
    }
    if (!sentences.isEmpty()) {
      add(Kind.READINGS, String.join(" ", sentences));
    }
  }

  /** Describes which numbers a common lag of the displays affects. */
  private String late(Estimate lag) {
    return "The displays follow by "
        + amount(lag, Unit.SECOND)
        + how(ConditionItem.DISPLAY_LAG)
        + ": power and charge were as displayed that much earlier after plugging in. Times between"
        + " two displayed values, amounts and averages do not change.";
  }

  /** Adds caveats where power and energy were measured away from the battery. */
  private void places() {
    boolean powerAtStation = isAt(ConditionItem.POWER_MEASURED_AT, "station");
    boolean energyAtStation = isAt(ConditionItem.ENERGY_COUNTED_AT, "station");
    boolean energyAtInlet = isAt(ConditionItem.ENERGY_COUNTED_AT, "inlet");
    List<String> sentences = new ArrayList<>();
    if (powerAtStation && isAt(ConditionItem.ENERGY_COUNTED_AT, "battery")) {
      sentences.add(apart("station", "battery", "losses and what heating or cooling takes"));
    } else if (powerAtStation && energyAtInlet) {
      sentences.add(apart("station", "inlet", "the losses of station and cable"));
    } else if (energyAtStation && isAt(ConditionItem.POWER_MEASURED_AT, "car")) {
      sentences.add(apart("car", "station", "losses and perhaps what heating or cooling takes"));
    }
    if ((powerAtStation || energyAtStation || energyAtInlet)
        && facts.known(ConditionItem.HEATING_INCLUDED).isEmpty()) {
      sentences.add(
          "Whether power and energy include what heating or cooling the battery and the cabin took"
              + " is not known.");
    }
    if (!sentences.isEmpty()) {
      add(Kind.ENERGY_COUNTER, String.join(" ", sentences));
    }
  }

  private static String apart(String power, String energy, String between) {
    return "Power was measured at the "
        + power
        + " and energy was counted at the "
        + energy
        + ": the two differ by "
        + between
        + ".";
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
        "The widest gap between readings is "
            + amount(Estimate.around(gap, 2 * trace.clockHalfStep()), Unit.SECOND)
            + ", beginning "
            + amount(Estimate.around(trace.second(widest), trace.clockHalfStep()), Unit.SECOND)
            + " after plugging in; what happened inside a gap is not known"
            + EventCaveats.inGap(
                EventFinder.notes(
                    recording.session(), trace.second(widest), trace.second(widest + 1)))
            + ".");
  }

  private void channels() {
    List<String> missing = new ArrayList<>();
    for (Channel channel : List.of(Channel.SOC, Channel.POWER, Channel.ENERGY_ADDED)) {
      if (recording.session().trace(channel).isEmpty()) {
        missing.add(channel == Channel.SOC ? "state of charge" : channel.columnName());
      }
    }
    if (!missing.isEmpty()) {
      add(
          Kind.CHANNELS,
          "Not recorded: " + String.join(", ", missing) + ". What needs it is withheld.");
    }
  }

  private void remarks() {
    facts
        .text(ConditionItem.REMARKS)
        .ifPresent(remark -> add(Kind.REMARK, "Of the session: " + remark));
  }

  private boolean isEstimated(ConditionItem item) {
    return facts.known(item).map(Fact::howKnown).filter(HowKnown.ESTIMATED::equals).isPresent();
  }

  private String how(ConditionItem item) {
    return isEstimated(item) ? ", by an estimate" : "";
  }

  private static String capitalised(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
