/**
 * What the template of a library may print: plain maps, lists and texts. A row's numbers become
 * text here, each with the value that it is sorted by.
 */
@NullMarked
package taperbook.write.library;

import org.jspecify.annotations.NullMarked;
