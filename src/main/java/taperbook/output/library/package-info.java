/** Results in the form that the library template uses. */
@NullMarked
package taperbook.output.library;

import org.jspecify.annotations.NullMarked;
