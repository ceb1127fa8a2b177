/**
 * The second stage: raw rows to sessions, range tests and report plans. Comes in: what {@code read}
 * gives. Goes out: the nouns of {@code model}, in base units, or every problem of the file with
 * place, found, expected and remedy. Units are converted here and nowhere else; nothing is guessed
 * and nothing is measured. This package has the entrances, one for each thing that is checked; the
 * packages below it do the work and do not know of it.
 */
@NullMarked
package taperbook.check;

import org.jspecify.annotations.NullMarked;
