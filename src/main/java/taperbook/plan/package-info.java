/** The parsed front matter of {@code reports/NAME.md}. */
@NullMarked
package taperbook.plan;

import org.jspecify.annotations.NullMarked;
