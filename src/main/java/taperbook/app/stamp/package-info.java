/** What made the files: which program, and the day that they bear. */
@NullMarked
package taperbook.app.stamp;

import org.jspecify.annotations.NullMarked;
