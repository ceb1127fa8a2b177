/**
 * What a tester recorded: charging sessions with their readings, conditions, range tests, and the
 * input rows that each value comes from. Values are in base units.
 */
@NullMarked
package taperbook.session;

import org.jspecify.annotations.NullMarked;
