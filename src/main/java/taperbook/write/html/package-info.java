/** The HTML page: one file that carries its styles, fonts and charts. */
@NullMarked
package taperbook.write.html;

import org.jspecify.annotations.NullMarked;
