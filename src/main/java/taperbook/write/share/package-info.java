/**
 * What a tester puts elsewhere: a summary and the main table of a report, composed of the model
 * that its page is printed from. Nothing is rounded or worded a second time.
 */
@NullMarked
package taperbook.write.share;

import org.jspecify.annotations.NullMarked;
