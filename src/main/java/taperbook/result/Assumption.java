package taperbook.result;

import taperbook.i18n.Texts;

/**
 * Assumptions that numbers depend on. Every method lists its assumptions, and the report prints
 * them. "Assumed, not tested" marks common practice without a source, or a choice of this program.
 * The variance between runs follows ISO 5725-2, from memory.
 */
public enum Assumption {
  /** A displayed value is uncertain by one step. */
  DISPLAY_STEP,
  /** All readings follow one power curve. */
  ONE_COURSE,
  /** Behaviour of power between readings. */
  POWER_WALK,
  /** When rows were recorded. */
  READING_HABIT,
  /** Elapsed time starts at plugging in. */
  TIME_FROM_PLUGGING_IN,
  /** Between readings the rate stays within the rates of the neighbouring gaps. */
  RATE_WITHIN_NEIGHBOURS,
  /** Power between two readings lies between their values. */
  POWER_WITHIN_READINGS,
  /** The curve consists of straight segments. */
  STRAIGHT_SEGMENTS,
  /** The energy counter counts from plugging in. */
  COUNTER_FROM_ZERO,
  /** A partial drive scales to a full battery. */
  SOC_SHARE_OF_RANGE,
  /** Each per cent of charge takes the same energy. */
  SAME_ENERGY_EACH_PERCENT,
  /** Rounding errors are independent. */
  INDEPENDENT_ROUNDING,
  /** Two counters cover the same period. */
  SAME_STRETCH,
  /** The energy of a battery is as stated. */
  STATED_ENERGY,
  /** The reading errors of two sessions are independent. */
  SESSIONS_INDEPENDENT,
  /** Calibration errors of two displays are left out. */
  DISPLAY_CALIBRATION_LEFT_OUT,
  /** Runs of one session are draws from one distribution. */
  RUNS_ALIKE,
  /** The power of a run differs by one common factor. */
  RUN_FACTOR,
  /** The tested consumption applies to the next leg. */
  SAME_DRIVE_AGAIN,
  /** Nothing is lost between charging and driving. */
  NO_LOSSES,
  /** Charging power depends only on the state of charge. */
  CURVE_BY_SOC,
  /** After the ramp, charging below that state of charge runs at the rate of a warm battery. */
  PACE_OF_A_WARM_BATTERY,
  /** The trip is driven like the test. */
  TRIP_AS_TESTED,
  /** Prices stay as stated. */
  PRICES_AS_STATED,
  /** A steady drive with quadratic drag. */
  STEADY_DRIVE,
  /** Share of the energy that reaches the wheels. */
  DRIVE_EFFICIENCY,
  /** Dry air as an ideal gas. */
  DRY_AIR,
  /** The manufacturer's range is achieved. */
  RATED_RANGE_HOLDS,
  /** Distances are as displayed by the odometer. */
  DISTANCE_AS_READ;

  Assumption() {}

  /** Returns the assumption as a full sentence. */
  public String sentence() {
    return Texts.ofConstant("assumption", this, "sentence");
  }

  /** Returns the source of the assumption. */
  public String source() {
    return Texts.ofConstant("assumption", this, "source");
  }
}
