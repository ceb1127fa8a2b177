/** The project folder with its published reports: sources, templates, versions and locks. */
@NullMarked
package taperbook.workspace;

import org.jspecify.annotations.NullMarked;
