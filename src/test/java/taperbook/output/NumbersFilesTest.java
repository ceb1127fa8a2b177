package taperbook.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import taperbook.i18n.Message;
import taperbook.output.data.NumbersCsv;
import taperbook.output.data.NumbersJson;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Numbers;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;
import taperbook.session.Caveat;
import taperbook.session.Origin;
import taperbook.session.RowRef;

final class NumbersFilesTest {
  private static final ReportJob JOB = InventedReport.job();

  @Test
  void json_has_every_number_as_measured() throws IOException {
    Map<?, ?> root = json(InventedReport.result(JOB));
    assertThat(root.keySet())
        .map(Object::toString)
        .containsExactly("format", "report", "inputs", "numbers", "checks", "sentences");
    assertThat(root.get("report")).isEqualTo("finch-first-look");
    List<ReportNumber> numbers = numbers(InventedReport.result(JOB));
    List<?> entries = (List<?>) list(root, "numbers");
    assertThat(entries).hasSameSizeAs(numbers);
    for (int i = 0; i < numbers.size(); i++) {
      same((Map<?, ?>) entries.get(i), numbers.get(i));
    }
  }

  private static void same(Map<?, ?> entry, ReportNumber number) {
    assertThat(entry.keySet())
        .map(Object::toString)
        .containsExactly(
            "id",
            "label",
            "value",
            "unit",
            "low",
            "high",
            "coverage",
            "basis",
            "method",
            "method_version",
            "session",
            "rows",
            "budget",
            "caveats",
            "withheld");
    assertThat(entry.get("budget")).isEqualTo(List.of());
    assertThat(entry.get("id")).isEqualTo(number.id());
    assertThat(entry.get("label")).isEqualTo(number.label());
    assertThat(entry.get("unit")).isEqualTo(number.unit().symbol());
    assertThat(entry.get("basis")).isEqualTo(number.metric().basis().words());
    assertThat(entry.get("method")).isEqualTo(number.method().name().toLowerCase(Locale.ROOT));
    assertThat(String.valueOf(entry.get("method_version")))
        .isEqualTo(String.valueOf(number.method().version()));
    assertThat(entry.get("session")).isEqualTo(number.origin().session());
    assertThat(entry.get("rows"))
        .isEqualTo(number.origin().rows().stream().map(RowRef::toString).toList());
    assertThat(entry.get("caveats"))
        .isEqualTo(number.caveats().stream().map(Caveat::sentence).toList());
    if (number.outcome() instanceof Outcome.Measured measured) {
      assertThat(amount(entry, "value")).isCloseTo(measured.estimate().value(), within(1e-8));
      assertThat(amount(entry, "low")).isCloseTo(measured.estimate().bounds().low(), within(1e-8));
      assertThat(amount(entry, "high"))
          .isCloseTo(measured.estimate().bounds().high(), within(1e-8));
      assertThat(amount(entry, "coverage")).isEqualTo(1);
      assertThat(entry.get("withheld")).isNull();
    } else {
      assertThat(entry.get("value")).isNull();
      assertThat(entry.get("low")).isNull();
      assertThat(entry.get("high")).isNull();
      assertThat(entry.get("withheld")).isEqualTo(number.withheld().orElseThrow());
    }
  }

  @Test
  void json_has_the_uncertainty_budget() throws IOException {
    List<?> entries = list(json(InventedReport.result(InventedReport.jobWithBudget())), "numbers");
    Map<?, ?> hold =
        entries.stream()
            .map(e -> (Map<?, ?>) e)
            .filter(e -> "peak_hold_time".equals(e.get("id")))
            .findFirst()
            .orElseThrow();
    assertThat(amount(hold, "coverage")).isEqualTo(0.95);
    List<?> budget = list(hold, "budget");
    assertThat(budget).hasSize(4);
    Map<?, ?> first = (Map<?, ?>) budget.get(0);
    assertThat(first.keySet())
        .map(Object::toString)
        .containsExactly("source", "standard_uncertainty", "share");
    assertThat(first.get("source")).isEqualTo("what happened between two readings");
    assertThat(amount(first, "standard_uncertainty")).isEqualTo(32.5);
    assertThat(amount(first, "share")).isEqualTo(0.81);
  }

  @Test
  void json_has_the_hash_of_every_input() throws IOException {
    List<?> inputs = list(json(InventedReport.result(JOB)), "inputs");
    assertThat(inputs).hasSize(4);
    assertThat(((Map<?, ?>) inputs.get(3)).get("file"))
        .isEqualTo("sessions/finch-ring-road/range-test.csv");
    // From sha256sum of coreutils, for "item,value,unit,how known\r\n".
    assertThat(((Map<?, ?>) inputs.get(3)).get("sha256"))
        .isEqualTo("e79faf31f5cfbe1b48ff0de7013e64d5b6a3a20fa3d1eac4f855ee8a7c53f692");
  }

  @Test
  void json_has_every_check_with_its_verdict() throws IOException {
    List<?> checks = list(json(InventedReport.result(JOB)), "checks");
    assertThat(checks).hasSize(3);
    Map<?, ?> agreeing = (Map<?, ?>) checks.get(0);
    Map<?, ?> differing = (Map<?, ?>) checks.get(1);
    Map<?, ?> open = (Map<?, ?>) checks.get(2);
    assertThat(agreeing.get("agrees")).isEqualTo(true);
    assertThat(differing.get("agrees")).isEqualTo(false);
    // By hand: 152.6 minus 159; the half-widths 1.8 and 0.5 add.
    assertThat(amount(differing, "difference")).isEqualTo(-6.4);
    assertThat(amount(differing, "low")).isEqualTo(-8.7);
    assertThat(amount(differing, "high")).isEqualTo(-4.1);
    assertThat(open.get("first")).isNull();
    assertThat(open.get("agrees")).isNull();
    assertThat(open.get("withheld")).isEqualTo("the odometer was not read at the end");
  }

  @Test
  void json_does_not_depend_on_the_locale() {
    String json =
        new String(
            new NumbersJson(InventedReport.result(JOB), JOB.inputs()).bytes(),
            StandardCharsets.UTF_8);
    assertThat(json)
        .startsWith("{\n  \"format\": 1,\n  \"report\": \"finch-first-look\",\n  \"inputs\": [\n");
    assertThat(json).endsWith("}\n").doesNotContain("\r").doesNotContain("E-").doesNotContain("E+");
  }

  @Test
  void json_keeps_ten_digits_and_no_exponent() throws IOException {
    ReportResult result =
        with(number("x", 1.0 / 3e7, List.of()), number("y", 2.5e11 / 3, List.of()));
    List<?> numbers = list(json(result), "numbers");
    assertThat(((Map<?, ?>) numbers.get(0)).get("value"))
        .isEqualTo(new BigDecimal("0.00000003333333333"));
    assertThat(((Map<?, ?>) numbers.get(1)).get("value")).isEqualTo(new BigDecimal("83333333330"));
  }

  @Test
  void json_abbreviates_more_than_a_hundred_rows_to_runs() throws IOException {
    List<RowRef> rows = new ArrayList<>();
    for (int line = 2; line <= 120; line++) {
      if (line != 50) {
        rows.add(new RowRef("a.csv", line));
      }
    }
    rows.add(new RowRef("b.csv", 7));
    List<?> numbers = list(json(with(number("x", 1, rows))), "numbers");
    assertThat(((Map<?, ?>) numbers.get(0)).get("rows"))
        .isEqualTo(List.of("a.csv:2-49", "a.csv:51-120", "b.csv:7"));
  }

  @Test
  void csv_has_the_same_numbers() throws IOException {
    List<CSVRecord> records = csv(InventedReport.result(JOB));
    List<ReportNumber> numbers = numbers(InventedReport.result(JOB));
    assertThat(records).hasSameSizeAs(numbers);
    for (int i = 0; i < numbers.size(); i++) {
      ReportNumber number = numbers.get(i);
      assertThat(records.get(i).get("id")).isEqualTo(number.id());
      assertThat(records.get(i).get("label")).isEqualTo(number.label());
      assertThat(records.get(i).get("withheld")).isEqualTo(number.withheld().orElse(""));
      if (number.estimate().isPresent()) {
        assertThat(Double.parseDouble(records.get(i).get("value")))
            .isCloseTo(number.estimate().get().value(), within(1e-8));
      } else {
        assertThat(records.get(i).get("value")).isEmpty();
      }
    }
  }

  @Test
  void csv_escapes_formulas() throws IOException {
    ReportNumber evil =
        new ReportNumber(
            Metric.charging("x", "=HYPERLINK(\"a\"), \"b\"\nc", Unit.KILOWATT, Method.HOLD),
            new Outcome.Withheld(Message.verbatim("@SUM(1)")),
            new Origin("-session", List.of()),
            List.of(new Caveat(Caveat.Kind.REMARK, Message.verbatim("+1"))));
    CSVRecord row = csv(with(evil)).get(0);
    assertThat(row.get("label")).isEqualTo("'=HYPERLINK(\"a\"), \"b\"\nc");
    assertThat(row.get("withheld")).isEqualTo("'@SUM(1)");
    assertThat(row.get("session")).isEqualTo("'-session");
    assertThat(row.get("caveats")).isEqualTo("'+1");
  }

  @Test
  void numbers_of_a_pair_come_last_and_name_the_compared_session() throws IOException {
    ReportResult result = InventedReport.result(InventedReport.jobWithPair());
    int own = numbers(result).size();
    List<?> entries = list(json(result), "numbers");
    assertThat(entries).hasSize(own + 1);
    Map<?, ?> last = (Map<?, ?>) entries.get(own);
    assertThat(last.get("id")).isEqualTo("mean_lead_shared");
    assertThat(last.get("against")).isEqualTo("finch-spring");
    assertThat(((Map<?, ?>) entries.get(own - 1)).containsKey("against")).isFalse();
    List<CSVRecord> records = csv(result);
    assertThat(records.get(own).get("id")).isEqualTo("mean_lead_shared");
    assertThat(records.get(own).get("against")).isEqualTo("finch-spring");
    assertThat(records.get(own - 1).get("against")).isEmpty();
  }

  @Test
  void caveats_of_a_pair_name_their_session() throws IOException {
    ReportResult result = InventedReport.result(InventedReport.jobWithPair());
    List<?> entries = list(json(result), "numbers");
    Caveat caveat = result.compared().get(0).caveats().get(0);
    assertThat(list((Map<?, ?>) entries.get(entries.size() - 1), "caveats").toString())
        .contains("finch-spring: " + caveat.sentence());
  }

  private static ReportNumber number(String id, double value, List<RowRef> rows) {
    return new ReportNumber(
        Metric.charging(id, id, Unit.KILOWATT, Method.HOLD),
        new Outcome.Measured(Estimate.exactly(value), 1),
        new Origin("s", rows),
        List.of());
  }

  private static ReportResult with(ReportNumber... numbers) {
    SessionResult main = InventedReport.result(JOB).main();
    return new ReportResult(
        InventedReport.result(JOB).plan(),
        new SessionResult(
            main.session(),
            main.rangeTest(),
            new Numbers(List.of(numbers)),
            List.of(),
            main.curves(),
            List.of()),
        List.of());
  }

  private static List<ReportNumber> numbers(ReportResult result) {
    return result.sessions().stream().flatMap(s -> s.numbers().all().stream()).toList();
  }

  private static Map<?, ?> json(ReportResult result) throws IOException {
    Object tree = JsonDocument.read(new NumbersJson(result, JOB.inputs()).bytes());
    return tree instanceof Map<?, ?> map ? map : Map.of();
  }

  private static List<?> list(Map<?, ?> map, String field) {
    return map.get(field) instanceof List<?> list ? list : List.of();
  }

  private static double amount(Map<?, ?> map, String field) {
    return map.get(field) instanceof BigDecimal number ? number.doubleValue() : Double.NaN;
  }

  private static List<CSVRecord> csv(ReportResult result) throws IOException {
    String text = new String(new NumbersCsv(result).bytes(), StandardCharsets.UTF_8);
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (var parser = format.parse(new StringReader(text))) {
      return parser.getRecords();
    }
  }
}
