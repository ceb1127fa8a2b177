/**
 * The figures of the chapter on the road: when to plug in, what a minute buys, the trip as blocks
 * of time.
 */
@NullMarked
package taperbook.draw.road;

import org.jspecify.annotations.NullMarked;
