/**
 * Holds the power curve of one session against that of another, over the states of charge that both
 * went through: where which of the two takes more power beyond doubt, where the curves cross, and
 * what that is worth in power and time. Gets two sessions, gives a {@code PairResult}. Knows {@code
 * model}, {@code words}, {@code curve} and {@code simulate} only.
 */
@NullMarked
package taperbook.measure.compare;

import org.jspecify.annotations.NullMarked;
