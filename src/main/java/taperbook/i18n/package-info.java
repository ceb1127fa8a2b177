/**
 * The texts of the program, by key, in properties files that can be translated. Depends on nothing
 * of ours.
 */
@NullMarked
package taperbook.i18n;

import org.jspecify.annotations.NullMarked;
