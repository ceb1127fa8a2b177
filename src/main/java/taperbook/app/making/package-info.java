/**
 * How reports and libraries are made: calls each stage in turn, so that no stage calls another.
 * Also whether what was made is out of date.
 */
@NullMarked
package taperbook.app.making;

import org.jspecify.annotations.NullMarked;
