/**
 * The joint estimate of power, energy and state of charge over time: courses drawn from their
 * distribution given all readings.
 */
@NullMarked
package taperbook.metric.course;

import org.jspecify.annotations.NullMarked;
