/**
 * Propagation of distributions by the Monte Carlo method of JCGM 101:2008: draws sessions and
 * drives that the rounded, sparse readings allow, measures each, and states the shortest 95 %
 * interval of every number with the budget of its sources. Seeded: the same readings give the same
 * intervals. Knows {@code model}, {@code curve} and {@code montecarlo} only.
 */
@NullMarked
package taperbook.measure.simulate;

import org.jspecify.annotations.NullMarked;
