/**
 * Facts, one a row: {@code conditions.csv} and {@code range-test.csv}, with value, unit and how
 * each is known; and the drive leg by leg, {@code legs.csv}.
 */
@NullMarked
package taperbook.check.facts;

import org.jspecify.annotations.NullMarked;
