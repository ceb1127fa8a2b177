/**
 * How numbers, units and dates are put into words: the one place where a figure becomes text, so
 * that a chart, a table and the article print it alike. Labels stand in {@code labels.properties},
 * which is all that a translation of them replaces; sentences stay with what they are about. Knows
 * only {@code model}.
 */
@NullMarked
package taperbook.words;

import org.jspecify.annotations.NullMarked;
