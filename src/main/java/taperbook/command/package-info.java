/** What each command does. */
@NullMarked
package taperbook.command;

import org.jspecify.annotations.NullMarked;
