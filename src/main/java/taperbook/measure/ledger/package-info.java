/**
 * Numbers as they are entered: what is said of one before it is measured, which caveats concern it,
 * and the one place where it is made.
 */
@NullMarked
package taperbook.measure.ledger;

import org.jspecify.annotations.NullMarked;
