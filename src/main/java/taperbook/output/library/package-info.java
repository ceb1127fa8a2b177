/** Results as the template of a library prints them. */
@NullMarked
package taperbook.output.library;

import org.jspecify.annotations.NullMarked;
