/**
 * Templates and the tester's article carried out in a restricted way: no Java classes, no files,
 * escaping on. What is wrong in them comes back as problems with their place.
 */
@NullMarked
package taperbook.write.text;

import org.jspecify.annotations.NullMarked;
