/**
 * Problems of the input as data: location, what was found, what is expected, and how to fix it.
 * Depends on no other package of the program.
 */
@NullMarked
package taperbook.diagnostics;

import org.jspecify.annotations.NullMarked;
