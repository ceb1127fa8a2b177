/** Quantities, units, intervals and estimates. Depends on no other package of the program. */
@NullMarked
package taperbook.quantity;

import org.jspecify.annotations.NullMarked;
