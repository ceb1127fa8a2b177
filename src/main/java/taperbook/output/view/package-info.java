/** Results as the templates of a report print them. */
@NullMarked
package taperbook.output.view;

import org.jspecify.annotations.NullMarked;
