/**
 * What a template may print: plain maps, lists and texts made from what was measured. Every number
 * becomes text here, by {@code words}, and is put in the place where a page shows it.
 */
@NullMarked
package taperbook.write.page;

import org.jspecify.annotations.NullMarked;
