/**
 * The adaptive Monte Carlo procedure of JCGM 101:2008 and the summary of what it draws; knows
 * nothing of sessions.
 */
@NullMarked
package taperbook.measure.montecarlo;

import org.jspecify.annotations.NullMarked;
