/** Results as data files: JSON, CSV, JSON-LD, data package. */
@NullMarked
package taperbook.output.data;

import org.jspecify.annotations.NullMarked;
