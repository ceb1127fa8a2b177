package taperbook.draw.library;

import java.util.Optional;
import taperbook.model.Estimate;
import taperbook.model.LibraryRow;

/**
 * One session in a scatter plot.
 *
 * @param name what it is called
 * @param x abscissa with its bounds
 * @param y ordinate with its bounds
 */
record Dot(String name, Estimate x, Estimate y) {
  /** The dot of a row, if it has both numbers. */
  static Optional<Dot> of(LibraryRow row, String name, String x, String y) {
    Optional<Estimate> across = row.numbers().estimate(x);
    Optional<Estimate> up = row.numbers().estimate(y);
    return across.isPresent() && up.isPresent()
        ? Optional.of(new Dot(name, across.get(), up.get()))
        : Optional.empty();
  }

  /** Both numbers times a factor each, to the units of the axes. */
  Dot times(double xFactor, double yFactor) {
    return new Dot(name, x.times(xFactor), y.times(yFactor));
  }

  /** True if a whisker of it can be seen. */
  boolean hasBounds() {
    return x.bounds().width() > 0 || y.bounds().width() > 0;
  }
}
