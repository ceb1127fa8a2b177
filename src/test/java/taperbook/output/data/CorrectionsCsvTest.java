package taperbook.output.data;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import taperbook.diagnostics.Checked;
import taperbook.input.CorrectionsParser;
import taperbook.input.csv.CsvParser;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Correction;
import taperbook.result.MovedNumber;
import taperbook.session.InputFile;

final class CorrectionsCsvTest {
  private static final MovedNumber PEAK =
      new MovedNumber(
          "peak_power",
          "finch",
          "",
          "Peak power",
          Unit.KILOWATT,
          Optional.of(new Estimate(160, new Interval(159.5, 160.5))),
          Optional.of(new Estimate(166, new Interval(165.5, 166.5))),
          List.of("readings.csv:9: \u201c60,160\u201d became \u201c60,166\u201d", "one more"));

  private static final MovedNumber WITHHELD =
      new MovedNumber(
          "mean_lead_shared",
          "finch",
          "finch-first",
          "Mean lead",
          Unit.KILOWATT,
          Optional.of(new Estimate(3, new Interval(2, 4))),
          Optional.empty(),
          List.of());

  @Test
  void written_records_are_parsed_unchanged() {
    List<Correction> corrections =
        List.of(
            new Correction(
                LocalDate.of(2026, 5, 2),
                LocalDate.of(2026, 4, 24),
                "=the power, \"misread\"",
                List.of(PEAK, WITHHELD)),
            new Correction(
                LocalDate.of(2026, 6, 1), LocalDate.of(2026, 5, 2), "Only words", List.of()));
    byte[] csv = CorrectionsCsv.bytes(corrections);
    assertThat(read(csv).value()).contains(corrections);
    assertThat(new String(csv, StandardCharsets.UTF_8))
        .startsWith("corrected,since,reason,")
        .contains("2026-05-02,2026-04-24,\"'=the power, \"\"misread\"\"\",peak_power,finch,,");
  }

  @Test
  void a_changed_file_is_refused_with_its_location() {
    String csv =
        new String(
            CorrectionsCsv.bytes(
                List.of(
                    new Correction(
                        LocalDate.of(2026, 5, 2), LocalDate.of(2026, 4, 24), "r", List.of(PEAK)))),
            StandardCharsets.UTF_8);
    assertThat(
            read(csv.replace("2026-05-02", "in May").getBytes(StandardCharsets.UTF_8)).problems())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.place()).hasToString("reports/r/corrections.csv:2:1");
              assertThat(p.found()).isEqualTo("\"in May\"");
              assertThat(p.expected()).isEqualTo("a day as in 2026-05-02, as the program wrote it");
              assertThat(p.remedy()).isEqualTo("put the file back as it was published");
            });
    assertThat(read(csv.replace(",160,", ",many,").getBytes(StandardCharsets.UTF_8)).problems())
        .singleElement()
        .satisfies(p -> assertThat(p.place()).hasToString("reports/r/corrections.csv:2:9"));
    assertThat(read(csv.replace("since", "when").getBytes(StandardCharsets.UTF_8)).problems())
        .singleElement()
        .satisfies(p -> assertThat(p.place()).hasToString("reports/r/corrections.csv:1"));
  }

  private static Checked<List<Correction>> read(byte[] csv) {
    return CsvParser.read(new InputFile("reports/r/corrections.csv", csv))
        .then(CorrectionsParser::check);
  }
}
