/** The commands: each takes a request, has done what was asked for, and says what came of it. */
@NullMarked
package taperbook.app.command;

import org.jspecify.annotations.NullMarked;
