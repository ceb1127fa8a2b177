/**
 * Parses CSV files to rows with line numbers, according to RFC 4180. The only package that uses
 * Commons CSV.
 */
@NullMarked
package taperbook.input.csv;

import org.jspecify.annotations.NullMarked;
