/** Front matter to plans, one parser for each group of keys. */
@NullMarked
package taperbook.input.plan;

import org.jspecify.annotations.NullMarked;
