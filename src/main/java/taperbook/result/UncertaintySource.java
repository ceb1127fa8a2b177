package taperbook.result;

import taperbook.i18n.Texts;

/** Sources of uncertainty of a session or a drive, with advice on how to reduce them. */
public enum UncertaintySource {
  /** Rounding of the displayed state of charge. */
  SOC_DISPLAY,
  /** Whether readings were recorded exactly when the display changed. */
  READING_HABIT,
  /** Position of a crossing between two readings. */
  BETWEEN_READINGS,
  /** Rounding of the clock. */
  CLOCK,
  /** Rounding of the displayed power. */
  POWER_DISPLAY,
  /** Rounding of the energy counter. */
  ENERGY_DISPLAY,
  /** Last digits of distance and correction, or the stated tolerance. */
  RANGE_DISTANCE,
  /** Rounding of the state of charge at both ends of the drive. */
  RANGE_SOC,
  /** Last digit of the energy used on the drive, or the stated tolerance. */
  RANGE_ENERGY,
  /** Spread between several drives under the same conditions. */
  BETWEEN_DRIVES,
  /** Last digits of the average speed and its correction. */
  SPEED;

  UncertaintySource() {}

  /** Returns the name of the source, for use in a table. */
  public String words() {
    return Texts.ofConstant("uncertainty", this, "words");
  }

  /** Returns an instruction that reduces the uncertainty next time. */
  public String advice() {
    return Texts.ofConstant("uncertainty", this, "advice");
  }
}
