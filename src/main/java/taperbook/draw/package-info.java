/**
 * Draws the charts of a report: measured curves and numbers come in, figures with words, SVG and
 * PNG go out. Each chart is first described in data units ({@code chart}) and then painted in every
 * size it is wanted in ({@code paint}, {@code picture}). This package and those below it are the
 * only ones that may use XChart, which draws grid and solid lines, and Batik's SVG generator; they
 * know {@code model} and {@code words}, measure nothing themselves, and read no file but the fonts
 * they carry. Here stands the entrance for a report of sessions.
 */
@NullMarked
package taperbook.draw;

import org.jspecify.annotations.NullMarked;
