package taperbook.metric.course;

/**
 * One course of a charging session that is consistent with its readings: energy and charge at nodes
 * in time, both non-decreasing, with constant power between nodes.
 *
 * <p>Charge is in display terms: a display first shows a figure when the charge reaches it,
 * whatever the rounding of the display.
 */
public final class Course {
  /** The course of readings that span no time; contains no information. */
  static final Course NONE =
      new Course(
          new double[] {Double.NaN, Double.NaN},
          new double[] {Double.NaN, Double.NaN},
          new double[] {Double.NaN, Double.NaN},
          new double[] {Double.NaN});

  private final double[] seconds;
  private final double[] energy;
  private final double[] charge;
  private final double[] calmPower;
  private final double displayRatio;

  /**
   * Creates a course.
   *
   * @param seconds times of the nodes, ascending, s; not copied
   * @param energy energy since the first node, non-decreasing, kWh; not copied
   * @param charge charge, non-decreasing, %; not copied
   * @param calmPower power of each cell without noise between readings, as measured at the power
   *     display, kW; not copied
   */
  Course(double[] seconds, double[] energy, double[] charge, double[] calmPower) {
    this(seconds, energy, charge, calmPower, 1);
  }

  /**
   * Creates a course whose energy is measured elsewhere than its displayed power.
   *
   * @param displayRatio power at the power display divided by power at the energy counter
   */
  Course(
      double[] seconds, double[] energy, double[] charge, double[] calmPower, double displayRatio) {
    this.displayRatio = displayRatio;
    this.seconds = seconds;
    this.energy = energy;
    this.charge = charge;
    this.calmPower = calmPower;
  }

  /** Returns the time of the first node, s. */
  public double firstSecond() {
    return seconds[0];
  }

  /** Returns the time of the last node, s. */
  public double lastSecond() {
    return seconds[seconds.length - 1];
  }

  /** Returns the charge at a time, %; extrapolates past the ends at the rate there. */
  public double chargeAt(double second) {
    return at(charge, second);
  }

  /**
   * Returns the energy since the first node, kWh; extrapolates past the ends at the power there.
   */
  public double energyAt(double second) {
    return at(energy, second);
  }

  /**
   * Returns when the display first shows a charge, s; extrapolates at the mean rate near the ends.
   */
  public double timeOfCharge(double percent) {
    return timeOf(charge, percent);
  }

  /**
   * Returns when an energy since the first node is reached, s; extrapolates at the power at the
   * ends.
   */
  public double timeOfEnergy(double kilowattHours) {
    return timeOf(energy, kilowattHours);
  }

  /**
   * Returns the power at a time as measured at the power display, kW: linear between the middles of
   * the cells, constant outside.
   */
  public double powerAt(double second) {
    return displayRatio * countedPowerAt(second);
  }

  private double countedPowerAt(double second) {
    int cell = cellOf(second);
    int other = neighbour(cell, second);
    return between(cell, power(cell), other, power(other), second);
  }

  /** Returns the adjacent cell on whose side a time lies; at the ends the cell itself. */
  private int neighbour(int cell, double second) {
    boolean before = second < (seconds[cell] + seconds[cell + 1]) / 2;
    return before ? Math.max(0, cell - 1) : Math.min(seconds.length - 2, cell + 1);
  }

  private double between(int cell, double here, int other, double there, double second) {
    double middle = (seconds[cell] + seconds[cell + 1]) / 2;
    double away = (seconds[other] + seconds[other + 1]) / 2;
    return other == cell ? here : here + (second - middle) / (away - middle) * (there - here);
  }

  /** Returns the mean power of the cell between two nodes, kW. */
  double power(int cell) {
    return (energy[cell + 1] - energy[cell]) * 3600 / (seconds[cell + 1] - seconds[cell]);
  }

  /**
   * Returns the mean of power over charge between two charges, kW: the integral of squared power
   * over the energy, as charge is proportional to energy within a cell.
   */
  public double meanPowerOverCharge(double fromPercent, double toPercent) {
    double from = timeOfCharge(fromPercent);
    double to = timeOfCharge(toPercent);
    int last = cellOf(to);
    double sum = 0;
    double start = from;
    double lastCharge = fromPercent;
    for (int cell = cellOf(from); cell <= last; cell++) {
      double end = cell == last ? to : seconds[cell + 1];
      double chargeHere = cell == last ? toPercent : charge[cell + 1];
      sum += countedPowerAt((start + end) / 2) * (chargeHere - lastCharge);
      start = end;
      lastCharge = chargeHere;
    }
    return sum / (toPercent - fromPercent);
  }

  /**
   * Returns the longest uninterrupted time at or above a power.
   *
   * @param threshold as measured at the power display, kW
   * @return start and end, s; equal if it is never reached
   */
  public double[] longestAbove(double threshold) {
    double[] ends = {seconds[0], seconds[0]};
    int cells = seconds.length - 1;
    int cell = 0;
    while (cell < cells) {
      if (calmPower[cell] < threshold) {
        cell++;
        continue;
      }
      int last = cell;
      while (last + 1 < cells && calmPower[last + 1] >= threshold) {
        last++;
      }
      double from = cell == 0 ? seconds[0] : passing(cell - 1, threshold);
      double to = last == cells - 1 ? seconds[cells] : passing(last, threshold);
      if (to - from > ends[1] - ends[0]) {
        ends[0] = from;
        ends[1] = to;
      }
      cell = last + 1;
    }
    return ends;
  }

  /**
   * Returns when the power finally falls below a value.
   *
   * @param threshold as measured at the power display, kW
   * @return the time, s; the last node's if the power ends at or above it, the first one's if it is
   *     never reached
   */
  public double lastAbove(double threshold) {
    int cells = seconds.length - 1;
    int cell = cells - 1;
    while (cell >= 0 && calmPower[cell] < threshold) {
      cell--;
    }
    if (cell == cells - 1) {
      return seconds[cells];
    }
    return cell < 0 ? seconds[0] : passing(cell, threshold);
  }

  /** Returns when the power crosses a value between the middles of adjacent cells. */
  private double passing(int cell, double threshold) {
    double one = (seconds[cell] + seconds[cell + 1]) / 2;
    double other = (seconds[cell + 1] + seconds[cell + 2]) / 2;
    double rise = calmPower[cell + 1] - calmPower[cell];
    return rise == 0 ? one : one + (threshold - calmPower[cell]) / rise * (other - one);
  }

  private int cellOf(double second) {
    int low = 0;
    int high = seconds.length - 1;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (seconds[middle] <= second) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private double at(double[] values, double second) {
    int cell = cellOf(second);
    double share = (second - seconds[cell]) / (seconds[cell + 1] - seconds[cell]);
    return values[cell] + share * (values[cell + 1] - values[cell]);
  }

  private double timeOf(double[] rising, double value) {
    int low = 0;
    int high = rising.length - 1;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (rising[middle] >= value) {
        high = middle;
      } else {
        low = middle;
      }
    }
    double rise = rising[high] - rising[low];
    if (value > rising[high] || value < rising[low]) {
      return outside(rising, low, value);
    }
    double share = rise > 0 ? (value - rising[low]) / rise : 1;
    return seconds[low] + share * (seconds[high] - seconds[low]);
  }

  /** Extrapolates past an end at the mean rate of the nearest tenth of the course. */
  private double outside(double[] rising, int low, double value) {
    int reach = Math.max(1, rising.length / 10);
    boolean before = low == 0 && value < rising[0];
    int from = before ? 0 : rising.length - 1 - reach;
    int to = before ? reach : rising.length - 1;
    double rise = rising[to] - rising[from];
    int end = before ? 0 : rising.length - 1;
    if (rise <= 0) {
      return before ? seconds[end] : Double.POSITIVE_INFINITY;
    }
    return seconds[end] + (value - rising[end]) * (seconds[to] - seconds[from]) / rise;
  }
}
