package taperbook.prosecheck;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import taperbook.prosecheck.TypedFigure.Verdict;

/** The labelled sentences of {@code src/test/resources/claims/corpus.csv}. */
final class Corpus {
  private static final Path FILE = Path.of("src/test/resources/claims/corpus.csv");

  private Corpus() {}

  /** A piece of an article with the verdicts of a careful reader. */
  record Piece(String half, String text, List<Label> labels) {}

  /** The verdict of one figure; the position is relative to the piece's first character. */
  record Label(int start, int end, Verdict verdict, String id) {}

  static List<Piece> half(String name) {
    return all().stream().filter(p -> p.half().equals(name)).toList();
  }

  static List<Piece> all() {
    try (Reader reader = Files.newBufferedReader(FILE, StandardCharsets.UTF_8)) {
      CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
      return format.parse(reader).stream().map(Corpus::piece).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Piece piece(CSVRecord row) {
    String text = row.get("text").replace("\\n", "\n");
    List<Label> labels = new ArrayList<>();
    int from = 0;
    for (String label : row.get("figures").split(";", -1)) {
      if (!label.isBlank()) {
        String[] parts = label.split("=", -1);
        String figure = parts[0].strip();
        int start = text.indexOf(figure, from);
        if (start < 0) {
          throw new IllegalStateException("no " + figure + " in " + text);
        }
        from = start + figure.length();
        String[] verdict = parts[1].strip().split(" ", 2);
        labels.add(
            new Label(
                start,
                from,
                verdict[0].equals("supported") ? Verdict.SUPPORTED : Verdict.CONTRADICTED,
                verdict[1].strip()));
      }
    }
    return new Piece(row.get("half"), text, labels);
  }
}
