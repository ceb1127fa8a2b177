/**
 * How fast a charging curve tapers: a continuous line of straight segments fitted to power over
 * state of charge, where the power falls for good, and how long it stays high. In come traces; out
 * go segments, breakpoints and shares with what is known of their uncertainty. Knows {@code model}
 * and {@code measure.curve} only; no randomness, so that the same readings give the same fit.
 */
@NullMarked
package taperbook.measure.taper;

import org.jspecify.annotations.NullMarked;
