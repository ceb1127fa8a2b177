/** Results in the form that the report templates use. */
@NullMarked
package taperbook.output.view;

import org.jspecify.annotations.NullMarked;
