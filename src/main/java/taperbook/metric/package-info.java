/**
 * The second stage: computes numbers, curves and caveats from sessions and range tests. Pure: no
 * files, clock or locale; draws use a fixed seed. Contains the entry points; subpackages compute.
 */
@NullMarked
package taperbook.metric;

import org.jspecify.annotations.NullMarked;
