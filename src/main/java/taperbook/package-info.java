/**
 * The program's entrance: {@link taperbook.Main} starts a command line, {@link
 * taperbook.CommandLine} runs its command.
 */
@NullMarked
package taperbook;

import org.jspecify.annotations.NullMarked;
