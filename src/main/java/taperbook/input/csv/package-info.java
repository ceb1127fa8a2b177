/**
 * CSV files to rows with their line numbers, by RFC 4180. The only package that uses Commons CSV.
 */
@NullMarked
package taperbook.input.csv;

import org.jspecify.annotations.NullMarked;
