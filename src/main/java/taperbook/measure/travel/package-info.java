/**
 * The numbers of the chapter on the road: where to plug in and for how long, what a minute buys,
 * trip, cost, range in standard conditions. Plans and physics come from {@code road}.
 */
@NullMarked
package taperbook.measure.travel;

import org.jspecify.annotations.NullMarked;
