import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The peer that reading and measuring is held against: merely iterates the CSV files of a folder
 * with Commons CSV, on as many threads as there are cores, and looks at the length of each cell.
 *
 * <pre>java -cp "target/lib/*" src/bench/CsvPeer.java FOLDER</pre>
 */
public final class CsvPeer {
  public static void main(String[] arguments) throws IOException {
    long begun = System.nanoTime();
    List<Path> files;
    try (Stream<Path> all = Files.walk(Path.of(arguments[0], "sessions"))) {
      files = all.filter(p -> p.toString().endsWith(".csv")).sorted().toList();
    }
    AtomicLong cells = new AtomicLong();
    AtomicLong characters = new AtomicLong();
    files.parallelStream().forEach(file -> iterate(file, cells, characters));
    System.out.printf(
        "%d files, %d cells, %d characters in %.2f s%n",
        files.size(), cells.get(), characters.get(), (System.nanoTime() - begun) / 1e9);
  }

  private static void iterate(Path file, AtomicLong cells, AtomicLong characters) {
    long count = 0;
    long length = 0;
    try (Reader text = Files.newBufferedReader(file, StandardCharsets.UTF_8);
        CSVParser rows = CSVFormat.RFC4180.parse(text)) {
      for (CSVRecord row : rows) {
        for (String cell : row) {
          count++;
          length += cell.length();
        }
      }
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
    cells.addAndGet(count);
    characters.addAndGet(length);
  }
}
