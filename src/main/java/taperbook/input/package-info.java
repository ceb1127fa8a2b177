/**
 * The first stage: parses the files of a project folder into sessions, range tests and plans, or
 * reports all their problems. This package has the entry points; its subpackages do the parsing.
 */
@NullMarked
package taperbook.input;

import org.jspecify.annotations.NullMarked;
