/**
 * Access to a project folder, on disk or in memory. {@link taperbook.input.folder.RegularFile} is
 * the only class that opens its files.
 */
@NullMarked
package taperbook.input.folder;

import org.jspecify.annotations.NullMarked;
