/**
 * What was published, read again: the files that a report's PDF carries and the numbers of {@code
 * numbers.json}. In: what two versions say. Out: where they differ, and which change of the input
 * moved which number. Knows {@code model} and {@code problem}; nothing is measured or written here.
 */
@NullMarked
package taperbook.proof;

import org.jspecify.annotations.NullMarked;
