/**
 * What rounded readings with gaps allow one to say about the curve behind them: crossings, bounds
 * that hold the true curve, integrals. Knows {@code model} only.
 */
@NullMarked
package taperbook.measure.curve;

import org.jspecify.annotations.NullMarked;
