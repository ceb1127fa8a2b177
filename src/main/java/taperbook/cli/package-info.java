/**
 * The command line as typed and the terminal as seen: arguments, help, completion, messages,
 * progress, exit status.
 */
@NullMarked
package taperbook.cli;

import org.jspecify.annotations.NullMarked;
