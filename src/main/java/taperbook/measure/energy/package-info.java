/**
 * Energy over state of charge as a straight line, both read from rounded displays. In come the
 * readings of one session; out go the energy for each per cent with its interval, how far the
 * readings lie off the line, and the change between two sessions. Knows {@code model} and {@code
 * measure.curve} only.
 */
@NullMarked
package taperbook.measure.energy;

import org.jspecify.annotations.NullMarked;
