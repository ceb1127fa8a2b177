/**
 * Charts in data units with their text alternatives, and the style they are painted in. Depends on
 * no graphics library.
 */
@NullMarked
package taperbook.chart.model;

import org.jspecify.annotations.NullMarked;
