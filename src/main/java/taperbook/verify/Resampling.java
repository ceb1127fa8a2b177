package taperbook.verify;

import java.util.List;
import java.util.Optional;
import taperbook.quantity.Estimate;

/**
 * A version of a report, and the same version recomputed with other draws.
 *
 * <p>Numbers come from seeded draws, and any change of a reading gives another seed. A difference
 * that other draws alone also produce does not count as a move.
 *
 * @param files the numbers as printed, followed by those of other draws; at least one
 */
public record Resampling(List<NumbersFile> files) {
  public Resampling {
    files = List.copyOf(files);
    if (files.isEmpty()) {
      throw new IllegalArgumentException("a version has at least its own numbers");
    }
  }

  /** Returns a version without other draws. */
  static Resampling none(NumbersFile numbers) {
    return new Resampling(List.of(numbers));
  }

  /** Returns the numbers as printed. */
  NumbersFile printed() {
    return files.get(0);
  }

  /** Returns a number in all of the draws. */
  ResampledNumber number(String key) {
    return new ResampledNumber(
        files.stream().map(f -> f.find(key).flatMap(PublishedNumber::estimate)).toList());
  }

  /** Returns the number as printed. */
  Optional<Estimate> printed(String key) {
    return printed().find(key).flatMap(PublishedNumber::estimate);
  }
}
