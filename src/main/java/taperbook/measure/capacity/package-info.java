/**
 * The energy of a full battery and what a per cent takes, by the fits of {@code energy}; what is
 * lost on the way, and the change since other sessions.
 */
@NullMarked
package taperbook.measure.capacity;

import org.jspecify.annotations.NullMarked;
