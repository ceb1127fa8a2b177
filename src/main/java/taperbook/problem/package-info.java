/**
 * Wrong input as data: what was found where, what is expected, and how to mend it. Knows nothing of
 * ours, so that every stage that meets input may use it.
 */
@NullMarked
package taperbook.problem;

import org.jspecify.annotations.NullMarked;
