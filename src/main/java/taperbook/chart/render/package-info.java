/**
 * Renders charts as SVG, PNG and PDF graphics: layers, label placement, encoding. The only package
 * that uses XChart and Batik.
 */
@NullMarked
package taperbook.chart.render;

import org.jspecify.annotations.NullMarked;
