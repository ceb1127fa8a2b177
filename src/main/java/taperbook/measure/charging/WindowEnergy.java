package taperbook.measure.charging;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import taperbook.measure.curve.EnergyOverTime;
import taperbook.measure.curve.LinearPower;
import taperbook.measure.recording.SocTime;
import taperbook.model.Estimate;
import taperbook.model.Interval;

/**
 * Energy and average power between two times that are each known within bounds only.
 *
 * <p>Energy and time of a window move together: a later end adds both. So the average is not the
 * quotient of two intervals, which would be far too wide, but the extreme of the quotient over all
 * pairs of times within their bounds. Between two knots the energy is linear in time and the
 * quotient monotone, so it is enough to try the ends and the knots between them.
 *
 * @param energy energy of the window, kWh
 * @param averagePower energy over time, kW
 */
record WindowEnergy(Estimate energy, Estimate averagePower) {
  static WindowEnergy of(EnergyOverTime energy, SocTime from, SocTime to) {
    Estimate value = energy.between(from.second(), to.second());
    double[] starts = candidates(energy, from);
    double[] ends = candidates(energy, to);
    Interval energies = value.bounds();
    double average = power(value.value(), from.second(), to.second());
    Interval averages = Interval.exactly(average);
    for (double start : starts) {
      for (double end : ends) {
        if (end > start) {
          Interval each = energy.between(start, end).bounds();
          energies = energies.hull(each);
          averages =
              averages.hull(power(each.low(), start, end)).hull(power(each.high(), start, end));
        }
      }
    }
    return new WindowEnergy(new Estimate(value.value(), energies), new Estimate(average, averages));
  }

  /** Average power in kW of an energy in kWh between two times; zero if they are the same. */
  private static double power(double kilowattHours, double from, double to) {
    return to > from ? kilowattHours * LinearPower.SECONDS_PER_HOUR / (to - from) : 0;
  }

  private static double[] candidates(EnergyOverTime energy, SocTime time) {
    double low = energy.clamp(time.times().low());
    double high = energy.clamp(time.times().high());
    return DoubleStream.concat(
            DoubleStream.of(low, time.second(), high), Arrays.stream(energy.knots(low, high)))
        .distinct()
        .sorted()
        .toArray();
  }
}
