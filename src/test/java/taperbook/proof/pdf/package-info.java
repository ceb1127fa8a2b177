@NullMarked
package taperbook.proof.pdf;

import org.jspecify.annotations.NullMarked;
