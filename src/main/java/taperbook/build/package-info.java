/** The build stages in order: from sources to the files of a report or library. */
@NullMarked
package taperbook.build;

import org.jspecify.annotations.NullMarked;
