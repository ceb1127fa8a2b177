package taperbook.input.cell;

/**
 * A time as it was written.
 *
 * @param seconds seconds since the zero of the column
 * @param stepSeconds one unit of the last digit written, s
 */
public record TimeReading(double seconds, double stepSeconds) {}
