/**
 * Draws the charts of a report: measured curves and numbers come in, figures with words, SVG and
 * PNG go out. Each chart is first described in data units ({@code Chart}) and then painted twice,
 * at print and at film size. The only package that may use XChart, which draws grid and solid
 * lines, and Batik's SVG generator; knows {@code model} and {@code words}, measures nothing itself,
 * and reads no file but the fonts it carries.
 */
@NullMarked
package taperbook.draw;

import org.jspecify.annotations.NullMarked;
