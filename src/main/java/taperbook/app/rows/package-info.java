/**
 * A library's rows from one run to the next: measured rows of sessions go in with what they were
 * measured from, and come out unchanged as long as that is the same. A memory and no truth: without
 * it, rows are measured anew and are the same.
 */
@NullMarked
package taperbook.app.rows;

import org.jspecify.annotations.NullMarked;
