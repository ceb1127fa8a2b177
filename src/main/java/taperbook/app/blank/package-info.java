/**
 * Start files and recording sheets: a name and a choice of units in, texts out. They are made from
 * the same lists of items, columns and keys that the input is checked against. Nothing here reads
 * or writes a file.
 */
@NullMarked
package taperbook.app.blank;

import org.jspecify.annotations.NullMarked;
