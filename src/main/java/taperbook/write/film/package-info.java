/** What a tester says and shows in a film of the session: points in time order, with captions. */
@NullMarked
package taperbook.write.film;

import org.jspecify.annotations.NullMarked;
