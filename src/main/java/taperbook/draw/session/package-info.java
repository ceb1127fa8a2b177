/**
 * The charts of one session: power and state of charge over time, power over state of charge,
 * distance over time.
 */
@NullMarked
package taperbook.draw.session;

import org.jspecify.annotations.NullMarked;
