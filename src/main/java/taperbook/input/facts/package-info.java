/**
 * Files of one fact a row: {@code conditions.csv} and {@code range-test.csv}, and {@code legs.csv}.
 */
@NullMarked
package taperbook.input.facts;

import org.jspecify.annotations.NullMarked;
