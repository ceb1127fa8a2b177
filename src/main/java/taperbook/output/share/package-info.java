/** Files to use elsewhere: summary, table, captions and film script. */
@NullMarked
package taperbook.output.share;

import org.jspecify.annotations.NullMarked;
