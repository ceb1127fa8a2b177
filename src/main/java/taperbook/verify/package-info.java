/**
 * Published files compared with recomputed ones: PDFs, {@code numbers.json}, and which input change
 * moved which number. Uses no stage, so that a publication is read without the code that made it.
 */
@NullMarked
package taperbook.verify;

import org.jspecify.annotations.NullMarked;
