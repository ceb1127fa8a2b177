package taperbook.metric.course;

import taperbook.session.Channel;

/**
 * A reading as a linear form of the unknowns: energies at up to three neighbouring nodes, and the
 * global parameters.
 */
final class ReadingForm {
  final Observation observation;
  final int first;

  /** Relative place of the reading's time in its cell, from 0 to 1. */
  final double share;

  final double[] banded = new double[3];
  final double[] bordered = new double[CourseModel.BORDER];
  double value;
  double variance;
  double edgeValue;
  double edgeVariance;

  double partVariance;

  /** Share of the draws in which the reading is at a change. */
  double edges;

  /** Part of the step that contains the value; -1 for its edge. */
  int part;

  ReadingForm(Observation observation, int first, double share) {
    this.observation = observation;
    this.first = first;
    this.share = share;
  }

  double second() {
    return observation.second();
  }

  /** Returns true if part or edge is drawn. */
  boolean isOpen() {
    return observation.channel() == Channel.SOC && observation.form() != Observation.Form.AT_CHANGE;
  }

  double of(double[] x, int n) {
    double sum = bandedOf(x, n);
    for (int i = 0; i < CourseModel.BORDER; i++) {
      sum += bordered[i] * x[n + i];
    }
    return sum;
  }

  double bandedOf(double[] x, int n) {
    if (first >= 0 && first + 2 < n) {
      return banded[0] * x[first] + banded[1] * x[first + 1] + banded[2] * x[first + 2];
    }
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      int at = first + i;
      if (at >= 0 && at < n) {
        sum += banded[i] * x[at];
      }
    }
    return sum;
  }
}
