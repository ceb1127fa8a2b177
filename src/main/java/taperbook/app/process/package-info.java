/**
 * The process as commands know it: streams and terminal, what is said on them and how it is broken
 * into lines, progress, time, environment and exit status.
 */
@NullMarked
package taperbook.app.process;

import org.jspecify.annotations.NullMarked;
