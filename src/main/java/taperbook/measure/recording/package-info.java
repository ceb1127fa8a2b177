/**
 * Sessions and range tests made ready for measuring: channels with the bounds that follow from
 * them, when a state of charge is reached, what the drive says, and figures on their way to
 * numbers.
 */
@NullMarked
package taperbook.measure.recording;

import org.jspecify.annotations.NullMarked;
