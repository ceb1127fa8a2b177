@NullMarked
package taperbook.proof;

import org.jspecify.annotations.NullMarked;
