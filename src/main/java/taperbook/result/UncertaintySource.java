package taperbook.result;

/** Sources of uncertainty of a session or a drive, with advice on how to reduce them. */
public enum UncertaintySource {
  /** Rounding of the displayed state of charge. */
  SOC_DISPLAY(
      "rounding of the state of charge",
      "note the moments at which the displayed state of charge changes, or log it in finer steps"),
  /** Whether readings were recorded exactly when the display changed. */
  READING_HABIT(
      "whether the display had just changed when it was read",
      "read the film either always at the change of the display or always at set times, with a"
          + " reading just before and just after each change"),
  /** Position of a crossing between two readings. */
  BETWEEN_READINGS(
      "what happened between two readings",
      "read more often, above all where the power changes fast and near the wanted marks"),
  /** Rounding of the clock. */
  CLOCK("rounding of the clock", "keep a clock with seconds or a frame counter in the picture"),
  /** Rounding of the displayed power. */
  POWER_DISPLAY("rounding of the power", "read a display or a log with finer steps of power"),
  /** Rounding of the energy counter. */
  ENERGY_DISPLAY(
      "rounding of the energy counter", "read an energy counter with finer steps at both ends"),
  /** Last digits of distance and correction, or the stated tolerance. */
  RANGE_DISTANCE(
      "distance and its correction", "measure the distance with a second, finer instrument"),
  /** Rounding of the state of charge at both ends of the drive. */
  RANGE_SOC(
      "rounding of the state of charge at both ends of the drive",
      "state how the display rounds, drive from a full battery and further down, or note where the"
          + " display changes"),
  /** Last digit of the energy used on the drive, or the stated tolerance. */
  RANGE_ENERGY("energy used on the drive", "read the energy used in finer steps"),
  /** Spread between several drives under the same conditions. */
  BETWEEN_DRIVES(
      "what differs from drive to drive", "drive once more at the same speed in the same weather"),
  /** Last digits of the average speed and its correction. */
  SPEED(
      "average speed and its correction",
      "write the average speed with a decimal, from distance and time");

  private final String words;
  private final String advice;

  UncertaintySource(String words, String advice) {
    this.words = words;
    this.advice = advice;
  }

  /** Returns the name of the source, for use in a table. */
  public String words() {
    return words;
  }

  /** Returns an instruction that reduces the uncertainty next time. */
  public String advice() {
    return advice;
  }
}
