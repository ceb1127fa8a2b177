/**
 * Draws the charts that hold sessions against each other: a report's result comes in, figures go
 * out. Describes each chart in data units and tells it in words; how lines, labels and bars are
 * painted is {@code draw}'s business.
 */
@NullMarked
package taperbook.draw.compare;

import org.jspecify.annotations.NullMarked;
