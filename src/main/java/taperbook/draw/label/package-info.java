/** Places for labels: near what they are about, off the curves, and never one on another. */
@NullMarked
package taperbook.draw.label;

import org.jspecify.annotations.NullMarked;
