/**
 * The nouns of Taperbook: readings, facts, sessions, range tests, report plans, and the numbers
 * that come of them. Immutable, checked when made, free of files, clocks and libraries. Everything
 * else in the program may use this package; it uses nothing of ours.
 *
 * <p>Bare numbers are in the units that {@code numbers.json} prints, named in every identifier:
 * seconds, kilowatts, kilowatt-hours, per cent of full charge, kilometres, degrees Celsius,
 * watt-hours per kilometre. Input is converted to them once, in {@code check}.
 */
@NullMarked
package taperbook.model;

import org.jspecify.annotations.NullMarked;
