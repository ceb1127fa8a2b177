/** Parses front matter to plans, with one parser for each group of keys. */
@NullMarked
package taperbook.input.plan;

import org.jspecify.annotations.NullMarked;
