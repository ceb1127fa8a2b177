package taperbook.metric.course;

/**
 * One course of a charging session that its readings allow: energy and charge at nodes in time,
 * both never falling, with power constant between two nodes.
 *
 * <p>Charge is counted as displays count it: a display first shows a figure when the charge reaches
 * it, whichever way the display rounds.
 */
public final class Course {
  /** The course of readings that span no time: nothing is known of it. */
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
   * A course.
   *
   * @param seconds times of the nodes, rising, s; not copied
   * @param energy energy since the first node, never falling, kWh; not copied
   * @param charge charge, never falling, %; not copied
   * @param calmPower power of each cell without noise between readings, as the power display counts
   *     it, kW; not copied
   */
  Course(double[] seconds, double[] energy, double[] charge, double[] calmPower) {
    this(seconds, energy, charge, calmPower, 1);
  }

  /**
   * A course whose energy is counted elsewhere than its power is shown.
   *
   * @param displayRatio power as the power display counts it, over power as the energy is counted
   */
  Course(
      double[] seconds, double[] energy, double[] charge, double[] calmPower, double displayRatio) {
    this.displayRatio = displayRatio;
    this.seconds = seconds;
    this.energy = energy;
    this.charge = charge;
    this.calmPower = calmPower;
  }

  /** Time of the first node, s. */
  public double firstSecond() {
    return seconds[0];
  }

  /** Time of the last node, s. */
  public double lastSecond() {
    return seconds[seconds.length - 1];
  }

  /** Charge at a time, %; past the ends at the rate there. */
  public double chargeAt(double second) {
    return at(charge, second);
  }

  /** Energy since the first node at a time, kWh; past the ends at the power there. */
  public double energyAt(double second) {
    return at(energy, second);
  }

  /** When the display first shows a charge, s; past the ends at the mean rate beside them. */
  public double timeOfCharge(double percent) {
    return timeOf(charge, percent);
  }

  /** When an energy since the first node is reached, s; past the ends at the power there. */
  public double timeOfEnergy(double kilowattHours) {
    return timeOf(energy, kilowattHours);
  }

  /**
   * Power at a time as the power display counts it, kW: linear between the middles of the cells,
   * constant outside of them.
   */
  public double powerAt(double second) {
    return displayRatio * countedPowerAt(second);
  }

  private double countedPowerAt(double second) {
    int cell = cellOf(second);
    int other = neighbour(cell, second);
    return between(cell, power(cell), other, power(other), second);
  }

  /** The cell beside a cell on whose side a time lies; at the ends the cell itself. */
  private int neighbour(int cell, double second) {
    boolean before = second < (seconds[cell] + seconds[cell + 1]) / 2;
    return before ? Math.max(0, cell - 1) : Math.min(seconds.length - 2, cell + 1);
  }

  private double between(int cell, double here, int other, double there, double second) {
    double middle = (seconds[cell] + seconds[cell + 1]) / 2;
    double away = (seconds[other] + seconds[other + 1]) / 2;
    return other == cell ? here : here + (second - middle) / (away - middle) * (there - here);
  }

  /** Mean power of the cell between two nodes, kW. */
  double power(int cell) {
    return (energy[cell + 1] - energy[cell]) * 3600 / (seconds[cell + 1] - seconds[cell]);
  }

  /**
   * Mean of power over charge between two of its values, kW: the integral of the square of power
   * over the energy, as charge follows energy within a cell.
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
   * The longest unbroken time at or above a power.
   *
   * @param threshold as the power display counts, kW
   * @return start and end, s; both the same if it is never reached
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
   * When the power last falls below a value, for good.
   *
   * @param threshold as the power display counts, kW
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

  /** When the power passes a value on its way from the middle of a cell to that of the next. */
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

  /** Past an end: carried on at the mean rate of the tenth of the course beside that end. */
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
