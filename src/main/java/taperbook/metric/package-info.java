/**
 * The second stage: sessions and range tests to numbers, curves and caveats. Pure: no files, no
 * clock, no locale, and draws from a fixed seed. Entry points; the packages below compute.
 */
@NullMarked
package taperbook.metric;

import org.jspecify.annotations.NullMarked;
