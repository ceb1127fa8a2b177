package taperbook.input.mapping;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import taperbook.diagnostics.Checked;
import taperbook.input.Given;
import taperbook.input.SessionParser;
import taperbook.input.csv.CsvParser;
import taperbook.session.InputFile;
import taperbook.session.Session;
import taperbook.session.Trace;

/** Foreign files with their maps for the tests of this package. */
public final class Foreign {
  static final String HEADS = "item,column or value,unit,factor,offset,format,missing\n";

  private Foreign() {}

  /** The session of a foreign file {@code r.csv} with a map {@code columns.csv}. */
  public static Checked<Session> session(String rows, String readings) {
    return CsvParser.read(file("columns.csv", HEADS + rows))
        .then(ColumnMapParser::check)
        .then(
            map ->
                SessionParser.check(
                    "s",
                    map,
                    CsvParser.read(file("r.csv", readings), map.layout()),
                    Checked.good(Given.table("c.csv", Given.CONDITIONS))));
  }

  static List<String> problems(String rows, String readings) {
    return Given.sentences(session(rows, readings));
  }

  static InputFile file(String path, String text) {
    return new InputFile(path, text.getBytes(StandardCharsets.UTF_8));
  }

  /** The content of a session's readings without line numbers, for comparison. */
  static String content(Session session) {
    return session.recorded()
        + session.traces().entrySet().stream()
            .map(e -> e.getKey() + " " + content(e.getValue()))
            .collect(Collectors.joining("\n"))
        + session.notes().stream().map(n -> n.second() + n.text()).toList();
  }

  private static String content(Trace trace) {
    double[] seconds = IntStream.range(0, trace.size()).mapToDouble(trace::second).toArray();
    double[] values = IntStream.range(0, trace.size()).mapToDouble(trace::value).toArray();
    return Arrays.toString(seconds)
        + Arrays.toString(values)
        + trace.halfStep()
        + " "
        + trace.clockHalfStep();
  }
}
