/**
 * Figures typed by hand in the article, compared with the results: supported, contradicted, or not
 * checkable.
 */
@NullMarked
package taperbook.prosecheck;

import org.jspecify.annotations.NullMarked;
