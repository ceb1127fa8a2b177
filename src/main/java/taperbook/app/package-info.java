/**
 * The command line and the wiring. The only place that knows the process: arguments, standard
 * streams, environment, exit status, and the folder that results are put into. It calls each stage
 * in turn; no stage calls another.
 */
@NullMarked
package taperbook.app;

import org.jspecify.annotations.NullMarked;
