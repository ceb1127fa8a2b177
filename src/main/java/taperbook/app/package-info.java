/**
 * The command line and the wiring. This package and those below it are the only place that knows
 * the process: arguments, standard streams, environment, exit status, and the folder that results
 * are put into. Here stand the entrance and the choice of a command; the packages below it do the
 * work and do not know of it.
 */
@NullMarked
package taperbook.app;

import org.jspecify.annotations.NullMarked;
