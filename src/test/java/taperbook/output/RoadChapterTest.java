package taperbook.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import taperbook.chart.plots.FigureSet;
import taperbook.metric.ReportMetrics;
import taperbook.metric.Sessions;
import taperbook.plan.RoadTopic;
import taperbook.plan.RoadWishes;
import taperbook.plan.Trip;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.ReportResult;
import taperbook.session.Channel;
import taperbook.session.InputFile;
import taperbook.session.RangeItem;

@Tag("slow")
final class RoadChapterTest {
  private static final Trip TRIP =
      new Trip(
          new WantedDistance(800, Unit.KILOMETRE),
          new WantedDistance(50, Unit.KILOMETRE),
          360,
          100,
          10);

  private static ReportFiles files = new ReportFiles();
  private static Document page = new Document("");

  private static ReportFiles write(RoadWishes road) {
    double[] seconds = new double[86];
    double[] soc = new double[86];
    double[] energy = new double[86];
    for (int i = 0; i < seconds.length; i++) {
      soc[i] = 5 + i;
      energy[i] = 0.6 * i;
      seconds[i] = Math.rint(1800 * Math.log(144 / (144 - 1.2 * i)));
    }
    ReportResult result =
        ReportMetrics.measure(
            Sessions.roadPlan(List.of(new WantedDistance(100, Unit.KILOMETRE)), road),
            Sessions.session()
                .channel(Channel.SOC, 0.5, seconds, soc)
                .channel(Channel.ENERGY_ADDED, 0.05, seconds, energy)
                .build(),
            List.of(),
            List.of(
                Sessions.rangeTest(
                    Map.of(
                        RangeItem.DISTANCE, Estimate.exactly(400),
                        RangeItem.START_SOC, Estimate.exactly(100),
                        RangeItem.END_SOC, Estimate.exactly(0),
                        RangeItem.ENERGY_USED, Estimate.exactly(60),
                        RangeItem.AVERAGE_SPEED, Estimate.exactly(100)))));
    ReportJob job =
        InventedReport.job(
            result,
            FigureSet.draw(result),
            List.of(new InputFile("reports/test.md", "---".getBytes(StandardCharsets.UTF_8))));
    return ReportWriter.write(job).value().orElseThrow();
  }

  @BeforeAll
  static void write() {
    files = write(new RoadWishes(EnumSet.allOf(RoadTopic.class), Optional.of(TRIP)));
    page = page(files);
  }

  private static Document page(ReportFiles from) {
    return Jsoup.parse(new String(from.bytes("report.html"), StandardCharsets.UTF_8));
  }

  @Test
  void the_chapter_is_present_only_if_requested() {
    assertThat(page.select("#on-the-road")).hasSize(1);
    Document without = page(write(RoadWishes.NONE));
    assertThat(without.select("#on-the-road, .road, a[href=#on-the-road]")).isEmpty();
    assertThat(without.text()).doesNotContain("Standard conditions");
  }

  @Test
  void cautions_come_first() {
    assertThat(page.select(".road .notice").text())
        .contains("A plan is not a promise")
        .contains("Keep a reserve")
        .contains("obey limits")
        .contains("manual and local rules first");
  }

  @Test
  void each_topic_has_its_heading_and_its_charts_in_the_chapter() {
    assertThat(page.select(".road h3").eachAttr("id")).containsExactly("trip");
    assertThat(page.select(".road figure").eachAttr("id")).containsExactly("figure-trip-timeline");
    assertThat(page.select("details:has(#road) h3").eachAttr("id"))
        .containsExactly("plug-in", "next-leg", "per-minute", "trip-stops", "standard");
    assertThat(page.select("details:has(#road) figure").eachAttr("id"))
        .containsExactly("figure-plug-in-table", "figure-road-per-minute");
  }

  @Test
  void links_have_targets_ids_are_unique_and_tables_have_captions() {
    for (Element link : page.select("a[href^=#]")) {
      assertThat(page.getElementById(link.attr("href").substring(1)))
          .as(link.attr("href"))
          .isNotNull();
    }
    assertThat(page.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
    Elements tables = page.select(".road table");
    assertThat(tables).isNotEmpty();
    tables.forEach(t -> assertThat(t.select("caption").text()).isNotBlank());
    assertThat(page.select(".road th:not([scope])")).isEmpty();
  }

  @Test
  void the_trip_states_its_request_and_reasons_of_withheld_numbers() {
    String text = page.select(".road").text().replace('\u00a0', ' ');
    assertThat(text)
        .contains(
            "800 km with a station every 50 km, 6 min for each stop beside charging, from 100 % at"
                + " the start, never below 10 %");
    assertThat(page.select("details:has(#road)").text().replace('\u00a0', ' '))
        .contains("Not known of the range test: the air temperature");
    assertThat(page.select("details:has(#withheld)").text()).contains("No price is stated.");
  }

  @Test
  void a_choice_is_not_printed_with_an_interval() {
    Element row = page.getElementById("number-trip_stop_1_unplug_soc");
    assertThat(row).isNotNull();
    if (row != null) {
      assertThat(row.select(".interval").text()).isEqualTo("exact");
      assertThat(row.text()).doesNotContain("coverage").doesNotContain("bounds");
    }
  }

  @Test
  void the_pdf_conforms_to_its_standards() throws VeraPDFException, IOException {
    VeraGreenfieldFoundryProvider.initialise();
    // The validator lower-cases names in the default locale, where Turkish has a dotless i.
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.ROOT);
    try {
      validate();
    } finally {
      Locale.setDefault(before);
    }
  }

  private static void validate() throws VeraPDFException, IOException {
    for (PDFAFlavour flavour : List.of(PDFAFlavour.PDFA_3_A, PDFAFlavour.PDFUA_1)) {
      try (PDFAParser parser =
              Foundries.defaultInstance()
                  .createParser(new ByteArrayInputStream(files.bytes("report.pdf")), flavour);
          PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
        List<String> failed =
            validator.validate(parser).getTestAssertions().stream()
                .filter(a -> a.getStatus() == TestAssertion.Status.FAILED)
                .map(a -> a.getRuleId().getClause() + " " + a.getMessage() + " " + a.getLocation())
                .distinct()
                .limit(5)
                .toList();
        assertThat(failed).as(flavour.getId()).isEmpty();
      }
    }
  }
}
