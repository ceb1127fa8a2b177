/**
 * What a report or a library asks for: the front matter by key, the numbers, roads and trips it
 * wants, and its history. A front matter comes in; a plan goes out.
 */
@NullMarked
package taperbook.check.plan;

import org.jspecify.annotations.NullMarked;
