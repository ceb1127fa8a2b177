package taperbook.verify;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import taperbook.session.InputFile;

/**
 * The content embedded in a report's PDF.
 *
 * @param files the files by path, except {@code numbers.json}
 * @param numbers the content of {@code numbers.json}
 * @param program name and version of the program that created it
 * @param made its date
 */
public record CarriedReport(
    Map<String, InputFile> files, NumbersFile numbers, String program, LocalDate made) {
  /** The file that contains the numbers. */
  public static final String NUMBERS = "numbers.json";

  public CarriedReport {
    files = Collections.unmodifiableMap(new TreeMap<>(files));
  }
}
