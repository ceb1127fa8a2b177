/**
 * Comparison of figures typed by hand in the article with the results: supported, contradicted, or
 * not checkable.
 */
@NullMarked
package taperbook.prosecheck;

import org.jspecify.annotations.NullMarked;
