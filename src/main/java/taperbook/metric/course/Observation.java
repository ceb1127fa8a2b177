package taperbook.metric.course;

import taperbook.session.Channel;

/**
 * One reading as an observation of the course.
 *
 * @param channel the channel
 * @param index index of the reading in its trace
 * @param second time, s
 * @param value the reading
 * @param displayVariance squared standard uncertainty from the display's step, squared unit
 * @param clockVariance squared standard uncertainty of the time, s2
 * @param form whether the reading fixes a value at a time or may be the moment of a change
 */
record Observation(
    Channel channel,
    int index,
    double second,
    double value,
    double displayVariance,
    double clockVariance,
    Form form) {
  /** How a reading relates to the course. */
  enum Form {
    /** The value lies anywhere in a step of the display. */
    WITHIN_STEP,
    /** The display has just changed: the value is an edge between two steps. */
    AT_CHANGE,
    /** Either of the two. */
    EITHER
  }
}
