/**
 * What files look like without opening them, so that a run with nothing to do is over at once.
 * Comes in: paths of a project folder. Goes out: whether anything that a report was made from or
 * into has changed since it was last looked at. The entrance asks this before it loads the program,
 * so these classes use no lambdas, no streams and no joined texts, all of which start slowly, and
 * know nothing of ours.
 */
@NullMarked
package taperbook.app.looks;

import org.jspecify.annotations.NullMarked;
