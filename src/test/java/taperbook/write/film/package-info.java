/** Tests of what is said and shown in a film. */
@NullMarked
package taperbook.write.film;

import org.jspecify.annotations.NullMarked;
