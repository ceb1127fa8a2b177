/** Executes the tester's Markdown and templates within limits and converts them to safe HTML. */
@NullMarked
package taperbook.output.article;

import org.jspecify.annotations.NullMarked;
