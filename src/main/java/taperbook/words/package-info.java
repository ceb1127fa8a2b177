/**
 * How numbers, units and dates are put into words: the one place where a figure becomes text, so
 * that a chart, a table and the article print it alike. Knows only {@code model}.
 */
@NullMarked
package taperbook.words;

import org.jspecify.annotations.NullMarked;
