package taperbook.proof;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import taperbook.model.InputFile;

/**
 * A report's PDF as it was read.
 *
 * @param files the files that it carries, {@code numbers.json} excepted, by path
 * @param numbers what its {@code numbers.json} says
 * @param program name and version of the program that made it
 * @param made the day that it bears
 * @param pages its pages in order
 * @param rest hash of what belongs to no page: outline, structure, metadata, attachments
 */
public record CarriedReport(
    Map<String, InputFile> files,
    NumbersFile numbers,
    String program,
    LocalDate made,
    List<Page> pages,
    String rest) {
  /** The file that holds the numbers. */
  public static final String NUMBERS = "numbers.json";

  /** Copies the collections. */
  public CarriedReport {
    files = Collections.unmodifiableMap(new TreeMap<>(files));
    pages = List.copyOf(pages);
  }

  /**
   * One page.
   *
   * @param lines its text, line by line
   * @param drawing hash of everything that it is drawn with
   */
  public record Page(List<String> lines, String drawing) {
    /** Copies the lines. */
    public Page {
      lines = List.copyOf(lines);
    }
  }
}
