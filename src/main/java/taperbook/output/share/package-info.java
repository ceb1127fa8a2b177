/** Files for use outside the report: summary, table, captions and film script. */
@NullMarked
package taperbook.output.share;

import org.jspecify.annotations.NullMarked;
