/**
 * Files with one fact per row: {@code conditions.csv} and {@code range-test.csv}; also {@code
 * legs.csv}.
 */
@NullMarked
package taperbook.input.facts;

import org.jspecify.annotations.NullMarked;
