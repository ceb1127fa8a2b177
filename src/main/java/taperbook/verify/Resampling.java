package taperbook.verify;

import java.util.List;
import java.util.Optional;
import taperbook.quantity.Estimate;

/**
 * A version of a report, and the same version measured again with other draws.
 *
 * <p>Numbers come from seeded draws, and any change of a reading gives another seed. What moves as
 * far when nothing but the draws is changed has not moved.
 *
 * @param files the numbers as they are printed, then those of other draws; at least one
 */
public record Resampling(List<NumbersFile> files) {
  /** Copies the list. */
  public Resampling {
    files = List.copyOf(files);
    if (files.isEmpty()) {
      throw new IllegalArgumentException("a version has at least its own numbers");
    }
  }

  /** A version that was not drawn again. */
  static Resampling none(NumbersFile numbers) {
    return new Resampling(List.of(numbers));
  }

  /** The numbers as they are printed. */
  NumbersFile printed() {
    return files.get(0);
  }

  /** A number in all of the draws. */
  ResampledNumber number(String key) {
    return new ResampledNumber(
        files.stream().map(f -> f.find(key).flatMap(PublishedNumber::estimate)).toList());
  }

  /** The number as it is printed. */
  Optional<Estimate> printed(String key) {
    return printed().find(key).flatMap(PublishedNumber::estimate);
  }
}
