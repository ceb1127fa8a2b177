/**
 * A PDF from anywhere: what it carries, and how it differs from the one that follows from that. In:
 * bytes. Out: the carried files and numbers, or the objects, pages and lines that differ. Knows the
 * PDF library, bounds what is read, and measures and writes nothing.
 */
@NullMarked
package taperbook.proof.pdf;

import org.jspecify.annotations.NullMarked;
