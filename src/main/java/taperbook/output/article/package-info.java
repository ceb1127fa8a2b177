/** The tester's Markdown and templates, executed within limits and turned into safe HTML. */
@NullMarked
package taperbook.output.article;

import org.jspecify.annotations.NullMarked;
