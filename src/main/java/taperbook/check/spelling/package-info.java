/**
 * The plain form in which names written by hand are compared, and what was most likely meant by one
 * that is not known. Suggests and never substitutes; knows nothing of tables and reports.
 */
@NullMarked
package taperbook.check.spelling;

import org.jspecify.annotations.NullMarked;
