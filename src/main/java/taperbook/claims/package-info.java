/**
 * Figures that the tester typed by hand in the article, held against what was measured: supported,
 * contradicted, or not traceable. In come the article's Markdown and the result of a report, out go
 * verdicts with places, and problems. Knows {@code model}, {@code words} and {@code problem}; no
 * library, since the finder must keep each character's place in the file.
 */
@NullMarked
package taperbook.claims;

import org.jspecify.annotations.NullMarked;
