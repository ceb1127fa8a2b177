/** Quantities, units, intervals and estimates. Depends on nothing of ours. */
@NullMarked
package taperbook.quantity;

import org.jspecify.annotations.NullMarked;
