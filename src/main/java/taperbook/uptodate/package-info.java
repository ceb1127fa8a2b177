/** Checks whether reports are up to date, by file status, before the program itself is loaded. */
@NullMarked
package taperbook.uptodate;

import org.jspecify.annotations.NullMarked;
