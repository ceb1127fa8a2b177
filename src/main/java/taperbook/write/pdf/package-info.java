/** The PDF: PDF/A-3a and PDF/UA-1 from the same page, with the inputs attached. */
@NullMarked
package taperbook.write.pdf;

import org.jspecify.annotations.NullMarked;
