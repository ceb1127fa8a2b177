/** HTML to PDF/A-3a and PDF/UA-1, with attachments. The only package that uses openhtmltopdf. */
@NullMarked
package taperbook.output.pdf;

import org.jspecify.annotations.NullMarked;
