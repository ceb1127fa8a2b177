/** The numbers of a report as data for other programs: JSON and CSV. */
@NullMarked
package taperbook.write.data;

import org.jspecify.annotations.NullMarked;
