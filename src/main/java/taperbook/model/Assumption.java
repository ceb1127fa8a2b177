package taperbook.model;

/** What a number takes for granted. Every method names its assumptions; the report lists them. */
public enum Assumption {
  /** Displays round to the nearest step. */
  NEAREST_STEP(
      "Displays show the nearest step, so the true value lies within half a step of the reading.",
      "JCGM 100:2008, 4.3.7 and F.2.2.1: the resolution of a display as a rectangular bound"),
  /** Elapsed time starts at plugging in. */
  TIME_FROM_PLUGGING_IN(
      "Elapsed time counts from plugging in: the zero of the elapsed column, or the first row"
          + " where clock times were written down.",
      "definition of this report"),
  /** State of charge never falls while charging. */
  SOC_NEVER_FALLS(
      "State of charge never falls while the car is charging.", "common practice, no source"),
  /** Between readings the rate stays within what the neighbouring gaps show. */
  RATE_WITHIN_NEIGHBOURS(
      "Between two readings the display's true value rises no faster and no slower than it does"
          + " anywhere in that gap and the two gaps beside it, as far as rounding lets one tell.",
      "assumption of this report; it bounds where between two readings a value was crossed"),
  /** Power between readings lies between them. */
  POWER_WITHIN_READINGS(
      "Between two readings the power lies between the two.",
      "assumption of this report; a shorter spike between readings would go unseen"),
  /** The curve is made of straight segments. */
  STRAIGHT_SEGMENTS(
      "Between its breakpoints the power changes evenly with the state of charge, apart from"
          + " scatter that is independent from reading to reading.",
      "assumption of this report; where a curve bends smoothly the segments stand in for it"),
  /** The energy counter counts from plugging in. */
  COUNTER_FROM_ZERO(
      "The energy counter stands at zero at plugging in, unless the first row shows otherwise.",
      "meaning of the channel"),
  /** A partial drive scales to a full battery. */
  SOC_SHARE_OF_RANGE(
      "Each per cent of displayed state of charge drives the same distance, so that a drive over"
          + " part of the battery scales to the whole of it.",
      "common practice, no source"),
  /** Each per cent takes the same energy. */
  SAME_ENERGY_EACH_PERCENT(
      "Each per cent of the displayed state of charge takes the same energy, so that a line through"
          + " part of the battery holds for the whole of it.",
      "common practice, no source; the scatter about the line tests it"),
  /** Rounding errors are independent. */
  INDEPENDENT_ROUNDING(
      "The rounding errors of different steps of the display are independent and, within half a"
          + " step, equally likely.",
      "JCGM 100:2008, 4.3.7 and F.2.2.1: a rectangular distribution"),
  /** Two counters run over the same time. */
  SAME_STRETCH(
      "The station's counter and the car's run over the same stretch of time.",
      "assumption of this report; both are compared between the same two readings of the clock"),
  /** The energy of a battery is as stated. */
  STATED_ENERGY(
      "The battery's usable energy is as stated, or as the charge implies.",
      "the tester's conditions; this report does not test it"),
  /** The readings of two sessions err independently. */
  SESSIONS_INDEPENDENT(
      "The rounding of two sessions' readings, and what happened between them, are independent of"
          + " each other.",
      "assumption of this report; each session was read by itself"),
  /** What two displays may be off by is left out. */
  DISPLAY_CALIBRATION_LEFT_OUT(
      "How far a car's displays of power and state of charge are off is not known. It is the same"
          + " for two sessions of one car, but two cars' displays may differ, and that is not in the"
          + " intervals.",
      "assumption of this report; only a calibrated meter could tell"),
  /** A logger's power is taken as it is. */
  LOGGED_POWER_ERROR(
      "The many power readings of a logger are taken as they are, but for one error within half a"
          + " step that they share.",
      "assumption of this report; independent rounding would average out"),
  /** The tested consumption holds for the next leg. */
  SAME_DRIVE_AGAIN(
      "The next leg is driven as the range test was: same speed, weather, load and route.",
      "common practice, no source"),
  /** Nothing is lost between charging and driving. */
  NO_LOSSES(
      "All energy that is added while charging comes out while driving. What is lost in between, and"
          + " what heating takes, is left out, so that the time is a lower limit.",
      "assumption of this report; energy out of a per cent over energy into it tests it"),
  /** Charging goes by the state of charge alone. */
  CURVE_BY_SOC(
      "The car charges at each state of charge as it did in the session there: by the state of"
          + " charge alone, with the battery as warm as it was then and a station that gives as"
          + " much.",
      "common practice, no source"),
  /** After the climb the pace goes on below it. */
  PACE_OF_A_WARM_BATTERY(
      "A battery that is warm already charges below the end of the climb at the pace that the"
          + " session had right after it.",
      "inference of this report; no session shows it"),
  /** The trip is driven as the test was. */
  TRIP_AS_TESTED(
      "The whole trip is driven at one speed, the same for all cars of the report: as stated, or the"
          + " average of the reported car's range test. Each car consumes what it did in its own"
          + " range test.",
      "common practice, no source"),
  /** Prices hold. */
  PRICES_AS_STATED(
      "The prices are as stated for the session, with nothing beside them.",
      "definition of this report"),
  /** A steady drive with a square law of drag. */
  STEADY_DRIVE(
      "The drive was steady at its average speed; drag is square in the speed through the air, with"
          + " one drag area for all directions.",
      "common practice in road load models, no source"),
  /** What reaches the wheels. */
  DRIVE_EFFICIENCY(
      "Of the battery's energy 80 to 93 % reaches the wheels.", "common practice, no source"),
  /** Dry air as an ideal gas. */
  DRY_AIR(
      "Air is dry and an ideal gas with the constant 287.05287 J/(kg K).",
      "ISO 2533:1975, from memory"),
  /** The maker's range holds. */
  RATED_RANGE_HOLDS(
      "The car drives the range that the maker states, which this report does not test.",
      "definition of the rated basis"),
  /** Distances are as the odometer gives them. */
  DISTANCE_AS_READ(
      "Distances are as read from the stated source, corrected only by the stated factor.",
      "common practice, no source");

  private final String sentence;
  private final String source;

  Assumption(String sentence, String source) {
    this.sentence = sentence;
    this.source = source;
  }

  /** The assumption, as a full sentence. */
  public String sentence() {
    return sentence;
  }

  /** Where it comes from. */
  public String source() {
    return source;
  }
}
