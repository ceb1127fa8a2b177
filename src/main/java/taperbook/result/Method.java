package taperbook.result;

import static taperbook.result.Assumption.COUNTER_FROM_ZERO;
import static taperbook.result.Assumption.CURVE_BY_SOC;
import static taperbook.result.Assumption.DISPLAY_CALIBRATION_LEFT_OUT;
import static taperbook.result.Assumption.DISPLAY_STEP;
import static taperbook.result.Assumption.DISTANCE_AS_READ;
import static taperbook.result.Assumption.DRIVE_EFFICIENCY;
import static taperbook.result.Assumption.DRY_AIR;
import static taperbook.result.Assumption.INDEPENDENT_ROUNDING;
import static taperbook.result.Assumption.NO_LOSSES;
import static taperbook.result.Assumption.ONE_COURSE;
import static taperbook.result.Assumption.PACE_OF_A_WARM_BATTERY;
import static taperbook.result.Assumption.POWER_WALK;
import static taperbook.result.Assumption.POWER_WITHIN_READINGS;
import static taperbook.result.Assumption.PRICES_AS_STATED;
import static taperbook.result.Assumption.RATED_RANGE_HOLDS;
import static taperbook.result.Assumption.RATE_WITHIN_NEIGHBOURS;
import static taperbook.result.Assumption.READING_HABIT;
import static taperbook.result.Assumption.RUNS_ALIKE;
import static taperbook.result.Assumption.RUN_FACTOR;
import static taperbook.result.Assumption.SAME_DRIVE_AGAIN;
import static taperbook.result.Assumption.SAME_ENERGY_EACH_PERCENT;
import static taperbook.result.Assumption.SAME_STRETCH;
import static taperbook.result.Assumption.SESSIONS_INDEPENDENT;
import static taperbook.result.Assumption.SOC_SHARE_OF_RANGE;
import static taperbook.result.Assumption.STATED_ENERGY;
import static taperbook.result.Assumption.STEADY_DRIVE;
import static taperbook.result.Assumption.STRAIGHT_SEGMENTS;
import static taperbook.result.Assumption.TIME_FROM_PLUGGING_IN;
import static taperbook.result.Assumption.TRIP_AS_TESTED;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import taperbook.i18n.Texts;
import taperbook.session.Input;

/** Computation methods of numbers, with the definitions that the methods section prints. */
public enum Method {
  /** First or last reading. */
  END_READING(List.of(DISPLAY_STEP)),
  /** A stated fact. */
  STATED_FACT(List.of()),
  /** Length of the session. */
  RECORDED_TIME(List.of(TIME_FROM_PLUGGING_IN)),
  /** Highest power read. */
  HIGHEST_READING(List.of(DISPLAY_STEP)),
  /** When the peak was first read. */
  FIRST_AT_PEAK(List.of(TIME_FROM_PLUGGING_IN, DISPLAY_STEP)),
  /** Longest continuous time near the peak. */
  HOLD(List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK)),
  /** When a state of charge is first reached. */
  SOC_CROSSING(List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT, TIME_FROM_PLUGGING_IN)),
  /** Time between two states of charge. */
  WINDOW_TIME(List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT)),
  /** A time minus interruptions. */
  INTERRUPTIONS(List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT)),
  /** Energy by the car's counter. */
  ENERGY_COUNTER(List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT, COUNTER_FROM_ZERO)),
  /** Energy by integrating power. */
  ENERGY_INTEGRAL(List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT)),
  /** Energy over time. */
  TIME_AVERAGE(List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT)),
  /** Mean over state of charge. */
  SOC_AVERAGE(List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT)),
  /** Energy per per cent. */
  ENERGY_SHARE(List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT)),
  /** Energy over state of charge as a straight line. */
  ENERGY_LINE(List.of(INDEPENDENT_ROUNDING, SAME_ENERGY_EACH_PERCENT)),
  /** Change of the implied full energy between sessions. */
  FULL_ENERGY_CHANGE(List.of(INDEPENDENT_ROUNDING, SAME_ENERGY_EACH_PERCENT)),
  /** Slope of the full energy over the odometer. */
  FULL_ENERGY_SLOPE(List.of(INDEPENDENT_ROUNDING, SAME_ENERGY_EACH_PERCENT)),
  /** A stop of a day relative to the first. */
  STOP_RATIO(List.of(DISPLAY_STEP, ONE_COURSE, SESSIONS_INDEPENDENT)),
  /** Station energy against battery energy. */
  CHARGING_LOSS(List.of(COUNTER_FROM_ZERO, DISPLAY_STEP, RATE_WITHIN_NEIGHBOURS, SAME_STRETCH)),
  /** Energy delivered per per cent relative to energy charged per per cent. */
  DRIVE_SHARE(List.of(DISPLAY_STEP, INDEPENDENT_ROUNDING, SAME_ENERGY_EACH_PERCENT)),
  /** Current of a plateau. */
  CURRENT_PLATEAU(List.of(DISPLAY_STEP)),
  /** Energy used over distance. */
  CONSUMPTION(List.of(DISPLAY_STEP, DISTANCE_AS_READ)),
  /** Displayed consumption. */
  CONSUMPTION_DISPLAYED(List.of(DISPLAY_STEP)),
  /** Range of a full battery, as driven. */
  DRIVEN_RANGE(List.of(DISPLAY_STEP, SOC_SHARE_OF_RANGE, DISTANCE_AS_READ)),
  /** Mean over drives. */
  DRIVES_MEAN(List.of(DISPLAY_STEP, SOC_SHARE_OF_RANGE, DISTANCE_AS_READ)),
  /**
   * Range at speeds between those driven; the form of the road load is that of SAE J1263 and J2263,
   * from memory.
   */
  RANGE_OVER_SPEED(List.of(DISPLAY_STEP, SOC_SHARE_OF_RANGE, DISTANCE_AS_READ)),
  /** State of charge that a distance needs. */
  SOC_SHARE(List.of(SOC_SHARE_OF_RANGE, SAME_DRIVE_AGAIN)),
  /** Time until the state of charge for a distance is added. */
  TIME_TO_ADD_BY_SHARE(
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          POWER_WALK,
          READING_HABIT,
          SOC_SHARE_OF_RANGE,
          SAME_DRIVE_AGAIN)),
  /** Distance gained after a time: the inverse of the time to add a distance. */
  DISTANCE_AFTER(
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          POWER_WALK,
          READING_HABIT,
          SOC_SHARE_OF_RANGE,
          SAME_DRIVE_AGAIN)),
  /** True state of charge after a time. */
  SOC_AFTER(List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT)),
  /** Distance gained in a window over its time. */
  CHARGING_SPEED(
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          POWER_WALK,
          READING_HABIT,
          SOC_SHARE_OF_RANGE,
          SAME_DRIVE_AGAIN)),
  /** Door-to-door times. */
  DOOR_TO_DOOR(List.of(DISPLAY_STEP)),
  /** Time until the energy for a distance is added. */
  TIME_TO_ADD_BY_ENERGY(
      List.of(
          COUNTER_FROM_ZERO,
          DISPLAY_STEP,
          ONE_COURSE,
          POWER_WALK,
          READING_HABIT,
          SAME_DRIVE_AGAIN,
          NO_LOSSES)),
  /** Time until the share of the rated range for a distance is added. */
  TIME_TO_ADD_RATED(
      List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT, RATED_RANGE_HOLDS)),
  /** Interpolation between two rows. */
  INTERPOLATION(List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT)),
  /** A piecewise-linear fit of power over state of charge. */
  SEGMENTED_FIT(List.of(DISPLAY_STEP, STRAIGHT_SEGMENTS)),
  /** Where the power drops below a share of the peak for the last time. */
  LAST_FALL(List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT)),
  /** Share of time above a power. */
  TIME_SHARE(List.of(TIME_FROM_PLUGGING_IN, DISPLAY_STEP, POWER_WITHIN_READINGS)),
  /** Time to charge from a state of charge until a distance is added. */
  PLUG_IN(
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          POWER_WALK,
          READING_HABIT,
          SOC_SHARE_OF_RANGE,
          SAME_DRIVE_AGAIN,
          CURVE_BY_SOC)),
  /** The same without the ramp at the start of the session. */
  PLUG_IN_WARM(
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          POWER_WALK,
          READING_HABIT,
          SOC_SHARE_OF_RANGE,
          SAME_DRIVE_AGAIN,
          CURVE_BY_SOC,
          PACE_OF_A_WARM_BATTERY)),
  /** Where to unplug before the next leg. */
  BEST_UNPLUG(
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          POWER_WALK,
          READING_HABIT,
          SOC_SHARE_OF_RANGE,
          SAME_DRIVE_AGAIN,
          CURVE_BY_SOC)),
  /** The fastest plan for a trip. */
  TRIP_PLAN(
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          POWER_WALK,
          READING_HABIT,
          SOC_SHARE_OF_RANGE,
          CURVE_BY_SOC,
          TRIP_AS_TESTED)),
  /** Distance added per minute. */
  ROAD_PER_MINUTE(
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          POWER_WALK,
          READING_HABIT,
          SOC_SHARE_OF_RANGE,
          SAME_DRIVE_AGAIN)),
  /** Cost of charging. */
  COST(List.of(DISPLAY_STEP, COUNTER_FROM_ZERO, PRICES_AS_STATED, SOC_SHARE_OF_RANGE)),
  /** The drive in standard air. */
  STANDARD_RANGE(
      List.of(
          DISPLAY_STEP,
          DISTANCE_AS_READ,
          SOC_SHARE_OF_RANGE,
          STEADY_DRIVE,
          DRIVE_EFFICIENCY,
          DRY_AIR)),
  /** Mean of both directions of a drive. */
  TWO_WAY_MEAN(List.of(DISPLAY_STEP, DISTANCE_AS_READ)),
  /** Peak over average. */
  PEAK_TO_AVERAGE(List.of(DISPLAY_STEP, POWER_WITHIN_READINGS)),
  /** Power over the energy of a full battery. */
  C_RATE(List.of(DISPLAY_STEP, STATED_ENERGY)),
  /** Time to add a distance from a given state of charge. */
  TIME_TO_ADD_FROM(
      List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT, SOC_SHARE_OF_RANGE)),
  /** Time to add an energy from a given state of charge. */
  TIME_TO_ADD_ENERGY(List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT)),
  /** Range of state of charge that two sessions share. */
  SHARED_WINDOW(List.of(DISPLAY_STEP)),
  /** Where one power curve lies above another. */
  LEAD_STRETCH(
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          SESSIONS_INDEPENDENT,
          RUN_FACTOR,
          DISPLAY_CALIBRATION_LEFT_OUT)),
  /** Where two power curves cross. */
  CURVE_CROSSING(
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          SESSIONS_INDEPENDENT,
          RUN_FACTOR,
          DISPLAY_CALIBRATION_LEFT_OUT)),
  /** Mean difference of two power curves. */
  POWER_LEAD(
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          SESSIONS_INDEPENDENT,
          RUN_FACTOR,
          DISPLAY_CALIBRATION_LEFT_OUT)),
  /** Difference of the same number of two sessions. */
  DIFFERENCE(List.of(SESSIONS_INDEPENDENT, RUN_FACTOR)),
  /** Difference of the times for the same share of charge. */
  TIME_GAIN(
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          SESSIONS_INDEPENDENT,
          RUN_FACTOR,
          DISPLAY_CALIBRATION_LEFT_OUT)),
  /** Mean over runs. */
  RUN_MEAN(List.of(RUNS_ALIKE)),
  /** Standard deviation between runs. */
  RUN_SPREAD(List.of(RUNS_ALIKE)),
  /** Standard deviation between runs in excess of reading uncertainty. */
  RUN_TO_RUN(List.of(RUNS_ALIKE)),
  /** Prediction of one more run. */
  NEXT_RUN(List.of(RUNS_ALIKE)),
  /** Ratio of a cold run to a warm one. */
  SEASON_RATIO(List.of(SESSIONS_INDEPENDENT)),
  /** Mean over pairs of cold and warm runs. */
  SEASON_MEAN(List.of(SESSIONS_INDEPENDENT, RUNS_ALIKE));

  private static final Set<Method> WITH_ENERGY =
      EnumSet.of(
          ENERGY_COUNTER,
          ENERGY_SHARE,
          ENERGY_LINE,
          FULL_ENERGY_CHANGE,
          FULL_ENERGY_SLOPE,
          CHARGING_LOSS,
          DRIVE_SHARE,
          TIME_AVERAGE,
          SOC_AVERAGE,
          TIME_TO_ADD_BY_ENERGY,
          TIME_TO_ADD_ENERGY,
          INTERPOLATION,
          COST,
          C_RATE);

  private static final Set<Method> WITH_WHOLE_SESSION =
      EnumSet.of(
          HOLD,
          RECORDED_TIME,
          SEGMENTED_FIT,
          TIME_SHARE,
          PEAK_TO_AVERAGE,
          PLUG_IN,
          PLUG_IN_WARM,
          BEST_UNPLUG,
          TRIP_PLAN,
          ROAD_PER_MINUTE,
          INTERRUPTIONS);

  /**
   * Versions of methods whose results have changed; all others are at version 1. Add every change
   * of a computation here, so that {@code verify} can name it for a report of an earlier program
   * version. All methods that draw courses are at version 2: courses of logs have other cells, and
   * their holds other ends.
   */
  private static final Map<Method, Integer> REVISED =
      Arrays.stream(values())
          .filter(m -> m.assumptions.contains(POWER_WALK))
          .collect(Collectors.toMap(m -> m, m -> 2));

  private final List<Assumption> assumptions;

  Method(List<Assumption> assumptions) {
    this.assumptions = assumptions;
  }

  /** Returns the inputs that the method needs in addition to those of the number itself. */
  Set<Input> inputs() {
    EnumSet<Input> inputs = EnumSet.noneOf(Input.class);
    if (WITH_ENERGY.contains(this)) {
      inputs.add(Input.ENERGY);
    }
    if (WITH_WHOLE_SESSION.contains(this)) {
      inputs.add(Input.WHOLE_SESSION);
    }
    return inputs;
  }

  /** Returns the id used in files, such as {@code highest_reading}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * Returns the version, from 1. Different versions may give different numbers for the same
   * readings.
   */
  public int version() {
    return REVISED.getOrDefault(this, 1);
  }

  /** Returns the method's heading. */
  public String title() {
    return Texts.ofConstant("method", this, "title");
  }

  /** Returns the definition in full sentences. */
  public String definition() {
    return Texts.ofConstant("method", this, "definition");
  }

  /**
   * Returns the formula in ASCII: readings x[1] to x[n], state of charge q in %, time t in s, power
   * P in kW, energy E in kWh; a name followed by a time in brackets is the value of a curve at that
   * time.
   */
  public String formula() {
    return Texts.ofConstant("method", this, "formula");
  }

  /** Returns the assumptions of the method. */
  public List<Assumption> assumptions() {
    return assumptions;
  }
}
