/**
 * What was published, read again: the files that a report's PDF carries, its printed text and its
 * drawing, and the numbers of {@code numbers.json}. In: bytes. Out: what they say, and where two of
 * them differ. Knows {@code model} and {@code problem}; nothing is measured or written here.
 */
@NullMarked
package taperbook.proof;

import org.jspecify.annotations.NullMarked;
