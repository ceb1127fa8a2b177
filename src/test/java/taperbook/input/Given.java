package taperbook.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.input.csv.CsvParser;
import taperbook.input.csv.CsvTable;
import taperbook.session.InputFile;
import taperbook.session.RangeTest;
import taperbook.session.Session;

/** Valid inputs for the tests of this package. */
public final class Given {
  public static final String CONDITIONS =
      """
      item,value,unit,how known
      date,2026-03-14,,
      vehicle,Northmoor Finch,,
      odometer,12000,km,displayed
      station rated power,200,kW,displayed
      ambient temperature,12,Cel,measured
      battery temperature at start,,Cel,unknown
      preconditioned,yes,,
      read from,film,,
      """;

  static final String RANGE_TEST =
      """
      item,value,unit,how known
      date,2026-03-15,,
      vehicle,Northmoor Finch,,
      distance,283.6,mi,displayed
      start soc,92,%,displayed
      end soc,11,%,displayed
      energy used,68,kWh,displayed
      average speed,110,km/h,measured
      ambient temperature,50,degF,measured
      """;

  private Given() {}

  public static CsvTable table(String path, String text) {
    return CsvParser.read(new InputFile(path, text.getBytes(StandardCharsets.UTF_8)))
        .value()
        .orElseThrow();
  }

  public static Checked<Session> session(String readings, String conditions) {
    return SessionParser.check("s", table("r.csv", readings), table("c.csv", conditions));
  }

  public static Session goodSession(String readings) {
    return good(session(readings, CONDITIONS));
  }

  static Checked<RangeTest> rangeTest(String rangeTest) {
    return RangeTestParser.check("t", table("t.csv", rangeTest), Optional.empty());
  }

  public static Checked<RangeTest> legs(String legs) {
    return RangeTestParser.check(
        "t", table("t.csv", RANGE_TEST), Optional.of(table("l.csv", legs)));
  }

  public static <T> T good(Checked<T> checked) {
    assertThat(checked.problems()).isEmpty();
    return checked.value().orElseThrow();
  }

  /** The problems of readings with valid conditions. */
  public static List<String> problems(String readings) {
    return sentences(session(readings, CONDITIONS));
  }

  public static List<String> sentences(Checked<?> checked) {
    return checked.problems().stream().map(Problem::sentence).toList();
  }
}
