package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.zip.GZIPOutputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The demo's page in a browser. */
@Tag("slow")
final class PageUseTest {
  private static final Path REPORT = Path.of("reports/finch-first-look").toAbsolutePath();
  private static final Path PAGE = REPORT.resolve("report.html");

  private static final int PHONE_WIDTH = 360;
  private static final int PHONE_HEIGHT = 740;

  @TempDir static Path scratch;

  private static Chromium browser;

  @BeforeAll
  static void start() throws Exception {
    browser = Chromium.start(scratch);
  }

  @AfterAll
  static void stop() throws Exception {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void open() throws Exception {
    browser.dark(false);
    browser.size(PHONE_WIDTH, PHONE_HEIGHT, true);
    browser.open(PAGE);
  }

  @Test
  void the_first_screen_of_a_phone_has_the_answer_three_numbers_and_the_top_of_the_chart() {
    assertThat(browser.number("document.querySelector('.answer').getBoundingClientRect().bottom"))
        .isLessThan(PHONE_HEIGHT);
    assertThat(browser.number("document.querySelectorAll('.lead .item').length")).isEqualTo(3);
    assertThat(browser.number("document.querySelector('.lead').getBoundingClientRect().bottom"))
        .isLessThan(PHONE_HEIGHT);
    assertThat(browser.number("document.querySelector('figure').getBoundingClientRect().top"))
        .isLessThan(PHONE_HEIGHT - 100);
  }

  @Test
  void with_closed_sections_it_is_short_small_and_has_few_tab_stops() throws IOException {
    assertThat(browser.number("document.documentElement.scrollHeight"))
        .isLessThan(25 * PHONE_HEIGHT);
    assertThat(
            browser.number(
                "[...document.querySelectorAll('a[href], button, input, summary, [tabindex=\"0\"]')]"
                    + ".filter(e => e.checkVisibility()).length"))
        .isLessThan(250);
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
      Files.copy(PAGE, gzip);
    }
    assertThat(packed.size()).isLessThan(130_000);
  }

  @ParameterizedTest
  @CsvSource({"360, true", "360, false", "768, true", "768, false", "1440, true", "1440, false"})
  void nothing_is_wider_than_the_window_except_scrollable_tables(int width, boolean dark)
      throws InterruptedException {
    browser.size(width, 900, width < 1000);
    browser.dark(dark);
    browser.open(PAGE);
    browser.script("document.querySelectorAll('details').forEach(d => d.open = true)");

    assertThat(browser.number("document.documentElement.scrollWidth")).isLessThanOrEqualTo(width);
    assertThat(
            browser.number(
                "[...document.querySelectorAll('table')].filter(t => !t.closest('.scroll')).length"))
        .isZero();
    assertThat(browser.complaints()).isEmpty();
  }

  @Test
  void the_stop_calculator_agrees_with_numbers_json_at_two_hundred_points() throws Exception {
    Map<?, ?> times = stopTimes();
    List<?> rows = (List<?>) Objects.requireNonNull(times.get("seconds"));
    int first = ((Number) Objects.requireNonNull(times.get("first_soc"))).intValue();
    int step = ((Number) Objects.requireNonNull(times.get("distance_step"))).intValue();
    Random random = new Random(20);
    List<String> points = new ArrayList<>();
    List<String> expected = new ArrayList<>();
    while (points.size() < 200) {
      int row = random.nextInt(rows.size());
      List<?> times2 = (List<?>) rows.get(row);
      int k = random.nextInt(times2.size());
      List<?> time = (List<?>) times2.get(k);
      points.add("[" + (first + row) + "," + (k + 1) * step + "]");
      expected.add(clock(time.get(0)) + " " + clock(time.get(1)) + " to " + clock(time.get(2)));
    }

    Object shown =
        browser.script(
            "["
                + String.join(",", points)
                + "].map(p => { const f = document.querySelector('form.stop');"
                + " f.elements.soc.value = p[0]; f.elements.distance.value = p[1];"
                + " f.dispatchEvent(new Event('input'));"
                + " return f.querySelector('output').textContent.replace(/\\s+/g, ' '); })");

    assertThat(shown).isEqualTo(expected);
  }

  @Test
  void stops_of_numbers_json_are_those_of_its_plug_in_table() throws Exception {
    Map<?, ?> times = stopTimes();
    List<?> rows = (List<?>) Objects.requireNonNull(times.get("seconds"));
    int first = ((Number) Objects.requireNonNull(times.get("first_soc"))).intValue();
    int compared = 0;
    for (Object each : (List<?>) Objects.requireNonNull(json().get("numbers"))) {
      Map<?, ?> number = (Map<?, ?>) each;
      String id = String.valueOf(number.get("id"));
      if (!id.matches("plug_in_\\d+_\\d+_km") || !isOfReported(number)) {
        continue;
      }
      int soc = Integer.parseInt(id.split("_", -1)[2]);
      int steps = Integer.parseInt(id.split("_", -1)[3]) / 10;
      List<?> row = soc < first ? List.of() : (List<?>) rows.get(soc - first);
      if (number.get("value") instanceof Number value) {
        List<?> time = (List<?>) row.get(steps - 1);
        assertThat(time)
            .as(id)
            .isEqualTo(
                List.of(
                    (int) Math.rint(value.doubleValue()),
                    (int) Math.floor(doubleOf(number, "low")),
                    (int) Math.ceil(doubleOf(number, "high"))));
        compared++;
      } else {
        assertThat(row.size()).as(id).isLessThan(steps);
      }
    }
    assertThat(compared).isGreaterThan(10);
  }

  @Test
  void an_intermediate_distance_has_an_intermediate_time_and_keys_change_it() {
    browser.focus(".stop input[name=distance]");
    set("distance", "100");
    String at100 = browser.text(".stop output");
    set("distance", "105");
    String at105 = browser.text(".stop output");
    set("distance", "110");
    String at110 = browser.text(".stop output");
    assertThat(List.of(at100, at105, at110)).doesNotHaveDuplicates();
    assertThat(seconds(at105)).isBetween(seconds(at100), seconds(at110));
    browser.press("ArrowUp", 38);
    assertThat(browser.text(".stop output")).isNotEqualTo(at110);
  }

  @Test
  void outside_the_recorded_charge_the_stop_states_it() {
    set("soc", "5");
    assertThat(browser.text(".stop output"))
        .startsWith("Not recorded: this session shows times for plugging in at 9 % to ");
    set("soc", "30");
    set("distance", "900");
    assertThat(browser.text(".stop output"))
        .matches("Not recorded: from 30 % this session shows the time for 1\\d0 km at most\\.");
    set("distance", "-3");
    assertThat(browser.text(".stop output")).isEqualTo("Give a distance above 0.");
  }

  @Test
  void in_miles_the_stop_is_unchanged_and_tables_are_converted_both_ways() {
    set("distance", "100");
    String inKilometres = browser.text(".stop output");
    String table = "[...document.querySelectorAll('td')].map(t => t.textContent).join()";
    Object before = browser.script(table);
    browser.click(".ways .tool");
    assertThat(browser.script("document.querySelector('.stop input[name=distance]').value"))
        .isEqualTo("62");
    set("distance", "62.13711922373339");
    assertThat(browser.text(".stop output")).isEqualTo(inKilometres);
    // 345 km, the driven range of the car, divided by 1.609344 km for a mile (exact).
    assertThat(browser.text(".stand b")).startsWith("214").endsWith("mi");
    assertThat(browser.script(table)).isNotEqualTo(before);
    browser.click(".ways .tool");
    assertThat(browser.script(table)).isEqualTo(before);
  }

  @Test
  void details_of_a_table_number_open_by_touch_and_close_by_key() {
    String number = "table.grid td a.value";
    browser.script(
        "document.querySelector('"
            + number
            + "').scrollIntoView({block: 'center', behavior: 'instant'})");
    double before = browser.number("scrollY");
    browser.tap(number, 0.5, 0.5);
    assertThat(browser.number("document.querySelectorAll('tr.opened').length")).isEqualTo(1);
    assertThat(
            browser.number(
                "document.querySelector('tr.opened').getBoundingClientRect().top"
                    + " - document.querySelector('"
                    + number
                    + "').getBoundingClientRect().bottom"))
        .isBetween(0.0, 40.0);
    assertThat(browser.number("scrollY")).isEqualTo(before);
    assertThat(browser.text("tr.opened"))
        .contains("Method", "Rows", "sessions/finch-ring-road/range-test.csv", "Caveat ", "Id");
    browser.focus(number);
    browser.press("Enter", 13);
    assertThat(browser.number("document.querySelectorAll('tr.opened').length")).isZero();
  }

  @Test
  void details_of_a_headline_number_open_without_a_script() throws Exception {
    try (Chromium plain = Chromium.start(scratch.resolve("plain"))) {
      plain.size(PHONE_WIDTH, PHONE_HEIGHT, true);
      plain.withoutScripts();
      plain.open(PAGE);
      plain.click(".lead .item summary");
      assertThat(plain.text(".lead .item .about")).contains("Method", "Rows", "Caveat ");
      assertThat(plain.script("document.querySelector('form.stop').checkVisibility()"))
          .isEqualTo(false);
      assertThat(plain.text("figure")).contains("168 kW");
      plain.open(PAGE.toUri() + "#number-peak_power");
      assertThat(plain.script("document.getElementById('number-peak_power').checkVisibility()"))
          .isEqualTo(true);
    }
  }

  @Test
  void the_readout_line_follows_mouse_touch_and_key() throws InterruptedException {
    browser.size(1440, 900, false);
    browser.open(PAGE);
    String out = "#figure-power-over-soc .readout output";
    browser.hover("#figure-power-over-soc .card", 0.35, 0.5);
    String byMouse = browser.text(out);
    assertThat(byMouse).matches("(?s)\\d+ %.*Charging power \\d+ kW \\([0-9.]+ to [0-9.]+ kW\\)");
    browser.focus("#figure-power-over-soc .readout input");
    browser.press("ArrowRight", 39);
    String byKey = browser.text(out);
    assertThat(byKey).isNotEqualTo(byMouse);
    assertThat(
            browser.script(
                "document.querySelector('#figure-power-over-soc .readout input')"
                    + ".getAttribute('aria-valuetext')"))
        .isNotNull();
    browser.size(PHONE_WIDTH, PHONE_HEIGHT, true);
    browser.open(PAGE);
    browser.tap("#figure-power-over-soc .card", 0.6, 0.5);
    assertThat(browser.text(out)).contains("kW").isNotEqualTo(byKey);
  }

  /** The values of the readout are readings: each is looked up in the session file. */
  @Test
  void the_readout_line_displays_the_readings_of_the_session_file() throws IOException {
    List<String> readings =
        Files.readAllLines(Path.of("sessions/finch-quarry-lane/readings.csv")).stream()
            .filter(line -> line.matches("[0-9].*"))
            .map(line -> line.split(",", -1)[1] + " % " + line.split(",", -1)[2] + " kW")
            .toList();
    Object shown =
        browser.script(
            "(() => { const f = document.querySelector('#figure-power-over-soc');"
                + " const s = f.querySelector('.readout input'); const all = [];"
                + " for (let i = 0; i <= Number(s.max); i++) { s.value = i;"
                + " s.dispatchEvent(new Event('input'));"
                + " all.push(f.querySelector('output b').textContent.replace(/\\s/g, ' ') + ' ' +"
                + " f.querySelector('output span').textContent.replace(/\\s/g, ' ')"
                + ".replace('Charging power ', '').replace(/ \\(.*/, '')); } return all; })()");
    List<String> whole =
        ((List<?>) Objects.requireNonNull(shown))
            .stream().map(String::valueOf).filter(s -> s.matches("\\d+ % .*")).toList();
    assertThat(whole).hasSizeGreaterThan(10);
    assertThat(readings).containsAll(whole);
  }

  @Test
  void a_session_can_be_hidden_in_a_chart() {
    String shapes =
        "[...document.querySelectorAll('#figure-compare-over-soc .narrow [stroke=\"#c7601c\"]')]"
            + ".filter(e => getComputedStyle(e).visibility === 'visible').length";
    assertThat(browser.number(shapes)).isPositive();
    browser.click("#figure-compare-over-soc .readout label:nth-of-type(2) input");
    assertThat(browser.number(shapes)).isZero();
    browser.click("#figure-compare-over-soc .readout label:nth-of-type(2) input");
    assertThat(browser.number(shapes)).isPositive();
  }

  @Test
  void a_table_is_copied_as_rows_of_equal_cells_and_a_number_as_a_link() {
    browser.script(
        "navigator.clipboard.writeText = t => { window.copied = t; return Promise.resolve(); }");
    browser.click("table.grid caption .tool");
    String copied = String.valueOf(browser.script("window.copied"));
    List<String> lines = copied.lines().toList();
    assertThat(lines).hasSize(4);
    assertThat(lines)
        .allMatch(l -> l.split("\t", -1).length == lines.get(0).split("\t", -1).length);
    assertThat(lines.get(1)).startsWith("100 km\t29");
    browser.click(".lead .item summary");
    browser.click(".lead .item .about button");
    assertThat(String.valueOf(browser.script("window.copied")))
        .startsWith("file:///")
        .endsWith("report.html#number-time_to_add_100_km");
  }

  @Test
  void a_link_into_a_closed_section_opens_it() throws InterruptedException {
    browser.open(PAGE.toUri() + "#assumptions");
    assertThat(browser.script("document.getElementById('assumptions').checkVisibility()"))
        .isEqualTo(true);
  }

  @Test
  void it_prints_on_at_most_ten_pages_without_clipping() throws IOException {
    try (PDDocument printed = Loader.loadPDF(browser.printed())) {
      assertThat(printed.getNumberOfPages()).isLessThanOrEqualTo(10);
      Edge edge = new Edge();
      String text = edge.getText(printed).replaceAll("\\s+", " ");
      assertThat(edge.rightmost).isLessThan(printed.getPage(0).getMediaBox().getWidth() - 20);
      assertThat(text)
          .contains("Difference", "withheld", "Cautions", "What a reader must know", "methods.pdf")
          .doesNotContain("Your stop", "Numbers in mi", "Read the chart");
    }
  }

  private static final class Edge extends PDFTextStripper {
    private float rightmost;

    @Override
    protected void writeString(String text, List<TextPosition> positions) throws IOException {
      positions.forEach(p -> rightmost = Math.max(rightmost, p.getX() + p.getWidth()));
      super.writeString(text, positions);
    }
  }

  private static void set(String name, String value) {
    browser.script(
        "(() => { const f = document.querySelector('form.stop'); f.elements['"
            + name
            + "'].value = '"
            + value
            + "'; f.dispatchEvent(new Event('input')); })()");
  }

  /** Seconds of the first time in a text such as {@code 6 min 29 s 6 min 22 s to …}. */
  private static int seconds(String text) {
    var time = java.util.regex.Pattern.compile("(?:(\\d+) min )?(\\d+) s").matcher(text);
    assertThat(time.find()).as(text).isTrue();
    String minutes = time.group(1);
    return (minutes == null ? 0 : 60 * Integer.parseInt(minutes)) + Integer.parseInt(time.group(2));
  }

  private static String clock(Object seconds) {
    int all = ((Number) seconds).intValue();
    String minutes = all < 60 ? "" : all / 60 + " min";
    String rest = all % 60 == 0 && all > 0 ? "" : all % 60 + " s";
    return (minutes + " " + rest).strip();
  }

  private static boolean isOfReported(Map<?, ?> number) {
    return "finch-quarry-lane".equals(number.get("session"));
  }

  private static double doubleOf(Map<?, ?> number, String field) {
    return ((Number) Objects.requireNonNull(number.get(field))).doubleValue();
  }

  private static Map<?, ?> stopTimes() throws IOException {
    return (Map<?, ?>) Objects.requireNonNull(json().get("stop_times"));
  }

  private static Map<?, ?> json() throws IOException {
    Object parsed = Chromium.parsed(Files.readString(REPORT.resolve("numbers.json")));
    return (Map<?, ?>) Objects.requireNonNull(parsed);
  }
}
