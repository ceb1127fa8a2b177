/**
 * The first stage: the files of a project folder to sessions, range tests and plans, or every
 * problem in them. Entry points; the packages below do the parsing.
 */
@NullMarked
package taperbook.input;

import org.jspecify.annotations.NullMarked;
