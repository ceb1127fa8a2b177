/**
 * A tester's records: charging sessions with their readings, conditions, range tests, and the input
 * row of each value. Values are in base units.
 */
@NullMarked
package taperbook.session;

import org.jspecify.annotations.NullMarked;
