/**
 * The project folder as its owner keeps it: sessions, range tests, front matters, templates, rows
 * of input. Files come in, each read once; what they mean goes out. Also start files put into it,
 * and a look at what changed in it.
 */
@NullMarked
package taperbook.app.project;

import org.jspecify.annotations.NullMarked;
