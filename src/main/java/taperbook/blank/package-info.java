/** Start files and recording sheets for the {@code blank} command. */
@NullMarked
package taperbook.blank;

import org.jspecify.annotations.NullMarked;
