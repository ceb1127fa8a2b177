/** The last stage: results and charts to the files of a report or library. Entry points. */
@NullMarked
package taperbook.output;

import org.jspecify.annotations.NullMarked;
