/**
 * The last stage: writes the files of a report or library from results and charts. Contains the
 * entry points.
 */
@NullMarked
package taperbook.output;

import org.jspecify.annotations.NullMarked;
