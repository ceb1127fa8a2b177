/**
 * From sessions and range tests to numbers. Everything here and below is a pure function of its
 * arguments: no files, no clock, no locale, no randomness. In come checked sessions and the plan of
 * a report; out go numbers that each carry interval, basis, caveats, rows and method, or the reason
 * why there is none. Uses {@code model} and {@code words} only. This package has the entrances, for
 * a report and for a library, and the order in which a session is measured; the packages below it
 * have the numbers by what they are about.
 */
@NullMarked
package taperbook.measure;

import org.jspecify.annotations.NullMarked;
