/**
 * Measured numbers and charts in, the files of a report out: HTML, PDF, JSON and CSV, as bytes. Two
 * runs with the same input give the same bytes. Nothing here computes a number, reads a file or
 * looks at the clock. Only this package and those below it use the libraries for templates,
 * Markdown, PDF and JSON.
 */
@NullMarked
package taperbook.write;

import org.jspecify.annotations.NullMarked;
