@NullMarked
package taperbook.claims;

import org.jspecify.annotations.NullMarked;
