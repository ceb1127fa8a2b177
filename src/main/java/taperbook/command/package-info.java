/** Implementations of the commands. */
@NullMarked
package taperbook.command;

import org.jspecify.annotations.NullMarked;
