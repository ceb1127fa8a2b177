/**
 * The one course behind the readings of a session: power, energy and charge over time, estimated
 * and drawn jointly from all channels, and range tests drawn beside it. In come a session and the
 * record of a drive; out go draws, and numbers as functions of a draw with value, interval and
 * budget. Knows {@code model} only.
 */
@NullMarked
package taperbook.measure.course;

import org.jspecify.annotations.NullMarked;
