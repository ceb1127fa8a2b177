/**
 * The command line as it can be written: commands, options and places, the arguments understood as
 * a request, and help and completion, which are made from the same lists.
 */
@NullMarked
package taperbook.app.line;

import org.jspecify.annotations.NullMarked;
