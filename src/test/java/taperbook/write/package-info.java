/** Tests of what a report's files hold, with an invented session. */
@NullMarked
package taperbook.write;

import org.jspecify.annotations.NullMarked;
