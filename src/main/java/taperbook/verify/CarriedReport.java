package taperbook.verify;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import taperbook.session.InputFile;

/**
 * What a report's PDF carries.
 *
 * @param files the files, {@code numbers.json} excepted, by path
 * @param numbers what its {@code numbers.json} says
 * @param program name and version of the program that made it
 * @param made the day that it bears
 */
public record CarriedReport(
    Map<String, InputFile> files, NumbersFile numbers, String program, LocalDate made) {
  /** The file that holds the numbers. */
  public static final String NUMBERS = "numbers.json";

  /** Copies the files. */
  public CarriedReport {
    files = Collections.unmodifiableMap(new TreeMap<>(files));
  }
}
