package taperbook.result;

/**
 * Assumptions that numbers depend on. Every method lists its assumptions, and the report prints
 * them. "Assumed, not tested" marks common practice without a source, or a choice of this program.
 * The variance between runs follows ISO 5725-2, from memory.
 */
public enum Assumption {
  /** A displayed value is uncertain by one step. */
  DISPLAY_STEP(
      "A display in steps leaves the true value open by one step, equally likely within it: half a"
          + " step to either side where it rounds to nearest, a whole step to one side where it rounds"
          + " down or up. How the state of charge rounds is as declared; where it is not, all three"
          + " are covered.",
      "JCGM 100:2008, 4.3.7 and F.2.2.1: the resolution of a display as a rectangular bound"),
  /** All readings follow one power curve. */
  ONE_COURSE(
      "All readings of a session show one course of power: energy is its integral, and the charge"
          + " rises with the energy. The energy of a per cent changes slowly over the session, with"
          + " standard deviations of 5 % and 3 % for two terms that bend it. Power display and counter"
          + " agree within about 0.3 % (Student's distribution with 2 degrees of freedom), and each may"
          + " be off by a tenth to a quarter of its step in all rows alike.",
      "assumed, not tested"),
  /** Behaviour of power between readings. */
  POWER_WALK(
      "Between readings the power goes on as a random walk whose steps follow Student's distribution"
          + " with 3 degrees of freedom, so that it may hold, fall evenly and step. The scale of the"
          + " walk follows from the readings, with a prior as from 3 steps of 0.6 % of the mean power"
          + " in the root of a second; at plugging in the steps are four times as wide, which passes"
          + " within half a minute.",
      "assumed, not tested"),
  /** When rows were recorded. */
  READING_HABIT(
      "Rows that were written at a change of the display lie on the edge between two figures, 0.1 s"
          + " late by the eye; others anywhere in their step. Where this is not declared, no row lies"
          + " on an edge with a chance of 40 %, each that can with 30 %, and else any share of them.",
      "assumed; which it is then follows from the readings"),
  /** Elapsed time starts at plugging in. */
  TIME_FROM_PLUGGING_IN(
      "Time counts from the zero of the elapsed column, or the first row"
          + " where clock times were written down.",
      "definition of this report"),
  /** Between readings the rate stays within the rates of the neighbouring gaps. */
  RATE_WITHIN_NEIGHBOURS(
      "Between two readings a counter rises no faster and no slower than it does anywhere in that gap"
          + " and the two gaps beside it, as far as rounding lets one tell.",
      "assumption of this report, in checks alone"),
  /** Power between two readings lies between their values. */
  POWER_WITHIN_READINGS(
      "Between two readings the power lies between the two.",
      "assumed; a shorter spike between readings would go unseen"),
  /** The curve consists of straight segments. */
  STRAIGHT_SEGMENTS(
      "Between its breakpoints the power changes evenly with the state of charge, apart from"
          + " scatter that is independent from reading to reading.",
      "assumed; where a curve bends smoothly the segments stand in for it"),
  /** The energy counter counts from plugging in. */
  COUNTER_FROM_ZERO(
      "The energy counter stands at zero at plugging in, unless the first row shows otherwise.",
      "meaning of the channel"),
  /** A partial drive scales to a full battery. */
  SOC_SHARE_OF_RANGE(
      "Each per cent of displayed state of charge drives the same distance, so that a drive over"
          + " part of the battery scales to the whole of it.",
      "assumed, not tested"),
  /** Each per cent of charge takes the same energy. */
  SAME_ENERGY_EACH_PERCENT(
      "Each per cent of the displayed state of charge takes the same energy, so that a line through"
          + " part of the battery holds for the whole of it.",
      "assumed; the scatter about the line tests it"),
  /** Rounding errors are independent. */
  INDEPENDENT_ROUNDING(
      "The rounding errors of different steps of the display are independent and, within half a"
          + " step, equally likely.",
      "JCGM 100:2008, 4.3.7 and F.2.2.1: a rectangular distribution"),
  /** Two counters cover the same period. */
  SAME_STRETCH(
      "The station's counter and the car's run over the same stretch of time.",
      "assumed; both are compared between the same two readings of the clock"),
  /** The energy of a battery is as stated. */
  STATED_ENERGY(
      "The battery's usable energy is as stated, or as the charge implies.",
      "the tester's conditions; this report does not test it"),
  /** The reading errors of two sessions are independent. */
  SESSIONS_INDEPENDENT(
      "The rounding of two sessions' readings, and what happened between them, are independent of"
          + " each other.",
      "assumed; each session was read by itself"),
  /** Calibration errors of two displays are left out. */
  DISPLAY_CALIBRATION_LEFT_OUT(
      "How far a car's displays of power and state of charge are off is not known. It is the same"
          + " for two sessions of one car, but two cars' displays may differ, and that is not in the"
          + " intervals.",
      "assumed; only a calibrated meter could tell"),
  /** Runs of one session are draws from one distribution. */
  RUNS_ALIKE(
      "Runs of one session differ by independent amounts of one normal distribution. What all runs"
          + " share, such as the drive behind a distance, is added in the root of squares; what a"
          + " display is off by in all of them is left out.",
      "JCGM 100:2008, 4.2 and G.3"),
  /** The power of a run differs by one common factor. */
  RUN_FACTOR(
      "From run to run the power of a car differs by one factor over the whole session, log-normal,"
          + " with the spread of average power that repeats of the reported session show or the tester"
          + " states, the same for all cars. Where neither is there the factor is left out, and what"
          + " is found is about single runs.",
      "assumed, not tested"),
  /** The tested consumption applies to the next leg. */
  SAME_DRIVE_AGAIN(
      "The next leg is driven as the range test was: same speed, weather, load and route.",
      "assumed, not tested"),
  /** Nothing is lost between charging and driving. */
  NO_LOSSES(
      "All energy that is added while charging comes out while driving. What is lost in between, and"
          + " what heating takes, is left out, so that the time is a lower limit.",
      "assumed; energy out of a per cent over energy into it tests it"),
  /** Charging power depends only on the state of charge. */
  CURVE_BY_SOC(
      "The car charges at each state of charge as it did in the session there: by the state of"
          + " charge alone, with the battery as warm as it was then and a station that gives as"
          + " much.",
      "assumed, not tested"),
  /** After the ramp, charging below that state of charge runs at the rate of a warm battery. */
  PACE_OF_A_WARM_BATTERY(
      "A battery that is warm already charges below the end of the climb at the pace that the"
          + " session had right after it.",
      "inference of this report; no session shows it"),
  /** The trip is driven like the test. */
  TRIP_AS_TESTED(
      "The whole trip is driven at one speed, the same for all cars of the report: as stated, or the"
          + " average of the reported car's range test. Each car consumes what it did in its own"
          + " range test.",
      "assumed, not tested"),
  /** Prices stay as stated. */
  PRICES_AS_STATED(
      "The prices are as stated for the session, with nothing beside them.",
      "definition of this report"),
  /** A steady drive with quadratic drag. */
  STEADY_DRIVE(
      "The drive was steady at its average speed; drag is square in the speed through the air, with"
          + " one drag area for all directions.",
      "assumed, not tested"),
  /** Share of the energy that reaches the wheels. */
  DRIVE_EFFICIENCY("Of the battery's energy 80 to 93 % reaches the wheels.", "assumed, not tested"),
  /** Dry air as an ideal gas. */
  DRY_AIR(
      "Air is dry and an ideal gas with the constant 287.05287 J/(kg K).",
      "ISO 2533:1975, whose density of standard air it gives"),
  /** The manufacturer's range is achieved. */
  RATED_RANGE_HOLDS(
      "The car drives the range that the maker states, which this report does not test.",
      "definition of the rated basis"),
  /** Distances are as displayed by the odometer. */
  DISTANCE_AS_READ(
      "Distances are as read from the stated source, corrected only by the stated factor.",
      "assumed, not tested");

  private final String sentence;
  private final String source;

  Assumption(String sentence, String source) {
    this.sentence = sentence;
    this.source = source;
  }

  /** Returns the assumption as a full sentence. */
  public String sentence() {
    return sentence;
  }

  /** Returns the source of the assumption. */
  public String source() {
    return source;
  }
}
