/** What a report asks for: the front matter of {@code reports/NAME.md}, parsed. */
@NullMarked
package taperbook.plan;

import org.jspecify.annotations.NullMarked;
