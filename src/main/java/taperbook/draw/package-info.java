/**
 * Draws the charts of a report: measured curves and numbers come in, figures with words, SVG and
 * PNG go out. Each chart is first described in data units ({@code chart}) and then painted in every
 * size it is wanted in ({@code paint}, which alone may use XChart, and {@code picture}, which alone
 * may use Batik). Knows {@code model} and {@code words}, measures nothing itself, and reads no file
 * but the fonts it carries. Here stands the entrance for a report of sessions.
 */
@NullMarked
package taperbook.draw;

import org.jspecify.annotations.NullMarked;
