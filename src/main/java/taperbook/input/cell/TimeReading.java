package taperbook.input.cell;

/**
 * A parsed time.
 *
 * @param seconds seconds since the zero of the column
 * @param stepSeconds value of one unit of the last digit, s
 */
public record TimeReading(double seconds, double stepSeconds) {}
