/** Tests that run whole commands on real files. */
@NullMarked
package taperbook.endtoend;

import org.jspecify.annotations.NullMarked;
