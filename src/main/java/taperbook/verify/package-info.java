/**
 * Comparison of published files with recomputed ones: PDFs, {@code numbers.json}, and which input
 * change moved which number. Uses no build stage, so that a publication is read independently of
 * the code that created it.
 */
@NullMarked
package taperbook.verify;

import org.jspecify.annotations.NullMarked;
