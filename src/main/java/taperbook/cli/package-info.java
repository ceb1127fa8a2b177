/**
 * The command line and the terminal: arguments, help, completion, messages, progress, exit status.
 */
@NullMarked
package taperbook.cli;

import org.jspecify.annotations.NullMarked;
