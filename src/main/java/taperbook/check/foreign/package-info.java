/**
 * Tables of other programs: {@code columns.csv}, which says what each of their columns is, a guess
 * at one where it is missing, and the table as it is seen through it. Nothing of the table is
 * rewritten: problems and rows name the foreign file's own lines.
 */
@NullMarked
package taperbook.check.foreign;

import org.jspecify.annotations.NullMarked;
