
import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.io.Reader;
import java.lang.management.ManagementFactory;
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
 * Baseline for parsing and measuring: iterates the CSV files of a folder
 * with Commons CSV, with one thread for each core, and reads the length of each cell.
 *
 * <pre>java -cp "target/lib/*" src/bench/CsvPeer.java FOLDER [PASSES]</pre>
 */
public final class CsvPeer {
  public static void main(String[] arguments) throws IOException {
    int passes = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 1;
    for (int i = 0; i < passes; i++) {
      pass(arguments[0]);
    }
  }

  private static void pass(String folder) throws IOException {
    OperatingSystemMXBean system =
        (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    long begun = System.nanoTime();
    long cpu = system.getProcessCpuTime();
    List<Path> files;
    try (Stream<Path> all = Files.walk(Path.of(folder, "sessions"))) {
      files = all.filter(p -> p.toString().endsWith(".csv")).sorted().toList();
    }
    AtomicLong cells = new AtomicLong();
    AtomicLong characters = new AtomicLong();
    files.parallelStream().forEach(file -> iterate(file, cells, characters));
    System.out.printf(
        "%d files, %d cells, %d characters: %.2f s wall, %.2f s processor%n",
        files.size(),
        cells.get(),
        characters.get(),
        (System.nanoTime() - begun) / 1e9,
        (system.getProcessCpuTime() - cpu) / 1e9);
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
