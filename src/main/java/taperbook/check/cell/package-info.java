/**
 * What one cell says, and no more: numbers with their last place, clock times in each of their
 * forms, the range that a quantity can sensibly have, and the scale that makes another unit's
 * amounts of it. Text comes in; values in base units go out, or none. Tells no problems itself.
 */
@NullMarked
package taperbook.check.cell;

import org.jspecify.annotations.NullMarked;
