package taperbook.input.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.diagnostics.Checked;
import taperbook.format.SessionNames;
import taperbook.input.Given;
import taperbook.input.folder.ReportFileParser;
import taperbook.plan.Basis;
import taperbook.plan.ReportPlan;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.session.InputFile;

final class ReportPlanParserTest {
  private static final String LEAST = "title: T\nsession: one\n";

  @Test
  void every_key_is_accepted() {
    ReportPlan plan =
        plan(
            """
            title: First look: the Finch
            author: A. Tester
            published: 2026-03-20
            session: one
            compare:
              - two
              - three
            Range-Test: ring, hill
            distances: 100 mi, 150km
            soc_marks: [80 %, 20, 50]
            window:
              - 10-80 %
              - 20 to 60
            units: mi
            basis: rated
            template: short
            """);
    assertThat(plan.name()).isEqualTo("look");
    assertThat(plan.heading())
        .isEqualTo(
            new ReportPlan.Heading(
                "First look: the Finch", "A. Tester", Optional.of(LocalDate.of(2026, 3, 20))));
    assertThat(plan.subject())
        .isEqualTo(new ReportPlan.Subject("one", List.of("two", "three"), List.of("ring", "hill")));
    assertThat(plan.wishes())
        .isEqualTo(
            new ReportPlan.Wishes(
                List.of(
                    new WantedDistance(100, Unit.MILE), new WantedDistance(150, Unit.KILOMETRE)),
                List.of(20, 50, 80),
                List.of(new SocWindow(10, 80), new SocWindow(20, 60))));
    assertThat(plan.style()).isEqualTo(new ReportPlan.Style(Unit.MILE, Basis.RATED, "short"));
    assertThat(plan.article()).isEqualTo(new ReportPlan.Article("Body\n", "reports/look.md", 19));
  }

  @Test
  void stops_are_the_sessions_of_a_day_including_the_reported_one() {
    assertThat(plan(LEAST + "stops: one, two\n").subject().stops()).containsExactly("one", "two");
    assertThat(problems(LEAST + "stops: two, three\n"))
        .singleElement()
        .asString()
        .contains(
            "found stops without \"one\"; expected two sessions or more of one day, the reported one"
                + " among them. To fix: name all stops of the day in their order.");
    assertThat(problems(LEAST + "stops: one\n")).singleElement().asString().contains("one stop");
  }

  @Test
  void seasons_are_pairs_of_sessions_or_of_drives() {
    ReportPlan.Season<String, String> season =
        plan(LEAST + "season: two, one; ring, hill\n").subject().season();
    assertThat(season.sessions()).containsExactly("two", "one");
    assertThat(season.drives()).containsExactly("ring", "hill");
    assertThat(problems(LEAST + "season:\n- two, ring\n- one\n- three, thre\n- hill, hill\n"))
        .containsExactly(
            "reports/look.md:5:8: found \"ring\", paired with \"two\"; expected two sessions or two"
                + " range tests in a pair. To fix: pair a session with a session and a range test"
                + " with a range test. [facts-contradict]",
            "reports/look.md:6:3: found \"one\", a pair of 1; expected two names in each pair, the"
                + " warm run first. To fix: write the warm run, a comma, and the cold run."
                + " [facts-contradict]",
            "reports/look.md:7:10: found \"thre\"; expected a session or range test that exists:"
                + " hill, one, ring, three, two. To fix: write \"three\". [name-unknown]",
            "reports/look.md:8:9: found \"hill\", named twice; expected each run in one"
                + " pair. To fix: remove one of the two. [facts-contradict]");
    assertThat(problems(LEAST + "season: ;\n")).singleElement().asString().contains("key-missing");
  }

  @Test
  void missing_keys_have_defaults() {
    ReportPlan plan = plan(LEAST);
    assertThat(plan.heading()).isEqualTo(new ReportPlan.Heading("T", "", Optional.empty()));
    assertThat(plan.subject()).isEqualTo(new ReportPlan.Subject("one", List.of(), List.of()));
    assertThat(plan.wishes())
        .isEqualTo(
            new ReportPlan.Wishes(
                List.of(
                    new WantedDistance(100, Unit.KILOMETRE),
                    new WantedDistance(200, Unit.KILOMETRE),
                    new WantedDistance(300, Unit.KILOMETRE)),
                List.of(10, 20, 30, 40, 50, 60, 70, 80, 90, 100),
                List.of(new SocWindow(10, 80))));
    assertThat(plan.style())
        .isEqualTo(new ReportPlan.Style(Unit.KILOMETRE, Basis.DRIVEN, "report"));
    assertThat(plan(LEAST + "units: mi\n").wishes().distances())
        .containsExactly(new WantedDistance(100, Unit.MILE), new WantedDistance(200, Unit.MILE));
  }

  @Test
  void film_pictures_are_created_only_if_requested() {
    assertThat(plan(LEAST).style().film()).isEqualTo(ReportPlan.Film.NONE);
    assertThat(plan(LEAST + "film: no\n").style().film().charts()).isFalse();
    assertThat(plan(LEAST + "film: yes\n").style().film().charts()).isTrue();
  }

  @Test
  void the_film_time_is_parsed_with_and_without_pictures() {
    assertThat(plan(LEAST + "film: offset 0:03:20\n").style().film())
        .isEqualTo(new ReportPlan.Film(false, OptionalInt.of(200)));
    assertThat(plan(LEAST + "film: yes, offset 12:00:01\n").style().film())
        .isEqualTo(new ReportPlan.Film(true, OptionalInt.of(43_201)));
    assertThat(plan(LEAST + "film:\n- Offset 0:00:00\n- yes\n").style().film())
        .isEqualTo(new ReportPlan.Film(true, OptionalInt.of(0)));
  }

  @Test
  void all_problems_of_a_film_are_reported_together() {
    assertThat(problems(LEAST + "film: offset 3:20, on, offset 0:03:60, offset -0:00:10\n"))
        .containsExactly(
            "reports/look.md:4:7: found \"offset 3:20\"; expected the time of the film at which"
                + " elapsed time is 0, as h:mm:ss. To fix: write it in that form, as in offset"
                + " 0:03:20. [value-not-understood]",
            "reports/look.md:4:20: found \"on\"; expected yes, no, or offset 0:03:20. To"
                + " fix: write no. [value-not-understood]",
            "reports/look.md:4:24: found \"offset 0:03:60\"; expected the time of the film at which"
                + " elapsed time is 0, as h:mm:ss. To fix: write it in that form, as in offset"
                + " 0:03:20. [value-not-understood]",
            "reports/look.md:4:40: found \"offset -0:00:10\"; expected the time of the film at"
                + " which elapsed time is 0, as h:mm:ss. To fix: write it in that form, as in"
                + " offset 0:03:20. [value-not-understood]");
    assertThat(problems(LEAST + "film: yes, no, offset 0:00:01, offset 0:00:02\n"))
        .containsExactly(
            "reports/look.md:4:12: found \"no\" beside \"yes\"; expected yes or no once, and one"
                + " offset. To fix: remove one of the two. [facts-contradict]",
            "reports/look.md:4:32: found \"offset 0:00:02\" beside \"offset 0:00:01\"; expected yes"
                + " or no once, and one offset. To fix: remove one of the two."
                + " [facts-contradict]");
  }

  @Test
  void repeats_are_dropped() {
    ReportPlan plan =
        plan(LEAST + "compare: two, two\ndistances: 100 km, 100 km\nsoc marks: 5, 5\n");
    assertThat(plan.subject().compare()).containsExactly("two");
    assertThat(plan.wishes().distances()).hasSize(1);
    assertThat(plan.wishes().socMarks()).containsExactly(5);
  }

  @Test
  void windows_accept_dashes_of_any_length() {
    assertThat(plan(LEAST + "window: 5\u201395%, 0 % - 100 %\n").wishes().windows())
        .containsExactly(new SocWindow(5, 95), new SocWindow(0, 100));
  }

  @Test
  void title_and_session_are_required() {
    assertThat(problems("title:\n"))
        .containsExactly(
            "reports/look.md:1: found no key session; expected the name of the session reported."
                + " To fix: write \"session: finch-quarry-lane\". [key-missing]",
            "reports/look.md:2:1: found title without a value; expected the title of the report."
                + " To fix: write \"title: A first look\". [key-missing]");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "compair: two|1|\"compair\"; expected one of the keys kind, title, author,"
            + " answer, published, state, corrections, session, compare, repeats, run spread,"
            + " range test, stops, season, distances, soc marks, window, road, trip, units,"
            + " basis, template, paper, film. To fix: write \"compare\". [key-unknown]",
        "colour: red|1|\"colour\"; expected one of the keys kind, title, author, answer,"
            + " published, state, corrections, session, compare, repeats, run spread, range"
            + " test, stops, season, distances, soc marks, window, road, trip, units, basis,"
            + " template, paper, film. To fix: remove the line, or write it into the article"
            + " below. [key-unknown]",
        "Title: again|1|\"Title\" as on line 2; expected each key once. To fix: remove"
            + " one of the two. [key-twice]",
        "compare: two, thre|15|\"thre\"; expected a session that exists: one, three,"
            + " two. To fix: write \"three\". [name-unknown]",
        "compare: summer|10|\"summer\"; expected a session that exists: one, three, two."
            + " To fix: write one that exists, or add a session of this name. [name-unknown]",
        "range test: rings|13|\"rings\"; expected a range test that exists: hill, ring."
            + " To fix: write \"ring\". [name-unknown]",
        "film: maybe|7|\"maybe\"; expected yes, no, or offset 0:03:20. To fix: write one of these."
            + " [value-not-understood]",
        "template: reprot|11|\"reprot\"; expected a template that exists: report, short."
            + " To fix: write \"report\". [name-unknown]",
        "compare: one|10|\"one\", the session reported itself; expected other sessions to compare it"
            + " with. To fix: remove it. [facts-contradict]",
        "published: 20.3.2026|12|\"20.3.2026\"; expected a day in ISO 8601, as in 2026-03-14."
            + " To fix: write year, month and day in that form. [value-not-understood]",
        "distances: 100 miles|12|\"100 miles\"; expected one of the units mi, km behind the number."
            + " To fix: write \"100 mi\". [unit-not-understood]",
        "distances: 100|12|\"100\"; expected one of the units mi, km behind the number."
            + " To fix: write the unit, as in \"100 km\". [unit-not-understood]",
        "distances: 99.5 mi|12|\"99.5 mi\"; expected a whole number with mi or km, as in 100 mi."
            + " To fix: write the distance in that form, parted by commas."
            + " [value-not-understood]",
        "distances: far|12|\"far\"; expected a whole number with mi or km, as in 100 mi."
            + " To fix: write the distance in that form, parted by commas."
            + " [value-not-understood]",
        "distances: 0 mi|12|\"0 mi\"; expected a distance from 1 to 9999 mi. To fix: correct the"
            + " distance. [value-out-of-range]",
        "soc marks: full|12|\"full\"; expected a whole number of per cent, as in 80. To fix: write"
            + " the marks in that form, parted by commas. [value-not-understood]",
        "soc marks: [0]|13|\"0\"; expected a state of charge from 1 to 100 %. To fix: correct the"
            + " mark. [value-out-of-range]",
        "window: most|9|\"most\"; expected two whole numbers of per cent, as in 10-80 %."
            + " To fix: write the window in that form. [value-not-understood]",
        "window: 80-10 %|9|\"80-10 %\"; expected a window that rises, within 0 to 100 %."
            + " To fix: write two different states of charge, none above 100, the lower one"
            + " first. [value-out-of-range]",
        "units: miles|8|\"miles\"; expected one of the words mi, km. To fix: write mi."
            + " [value-not-understood]",
        "basis: rate|8|\"rate\"; expected one of the words driven, rated. To fix: write rated."
            + " [value-not-understood]",
        "basis: energy|8|\"energy\"; expected one of the words driven, rated. To fix: write one of"
            + " these words. [value-not-understood]",
      })
  void invalid_values_of_every_key_are_reported(String entry, int column, String expected) {
    assertThat(problems(LEAST + entry + "\n"))
        .containsExactly("reports/look.md:4:" + column + ": found " + expected);
  }

  @Test
  void several_values_for_a_single_value_key_are_refused() {
    assertThat(problems(LEAST + "units:\n- mi\n- km\n"))
        .containsExactly(
            "reports/look.md:6:3: found 2 values; expected one value for units. To fix: keep the one"
                + " that is meant. [value-not-understood]");
  }

  @Test
  void an_unknown_session_is_refused() {
    Checked<ReportPlan> checked =
        ReportPlanParser.check(
            "look",
            ReportFileParser.read(file("title: T\nsession: one\n")).value().orElseThrow(),
            Set.of(),
            Set.of(),
            Set.of("report"),
            name -> false);
    assertThat(Given.sentences(checked))
        .containsExactly(
            "reports/look.md:3:10: found \"one\"; expected the name of a session, of which there is"
                + " none. To fix: write one that exists, or add a session of this name."
                + " [name-unknown]");
  }

  @Test
  void more_than_five_compared_sessions_are_refused_at_the_sixth() {
    String list = "title: T\nsession: one\ncompare:\n- a\n- b\n- c\n- d\n- e\n";
    Set<String> known = Set.of("one", "a", "b", "c", "d", "e", "f");
    assertThat(Given.good(checkWith(known, list)).subject().compare()).hasSize(5);
    assertThat(Given.good(checkWith(known, list + "- b\n")).subject().compare()).hasSize(5);
    assertThat(Given.sentences(checkWith(known, list + "- f\n")))
        .containsExactly(
            "reports/look.md:10:3: found 6 sessions to compare; expected at most 5, as charts and"
                + " tables cannot distinguish more. To fix: remove sessions from here on, or write"
                + " a second report. [value-out-of-range]");
    // Together with the reported session they use all letters.
    assertThat(SessionNames.MOST).isEqualTo(6);
  }

  private static Checked<ReportPlan> checkWith(Set<String> sessions, String frontMatter) {
    return ReportPlanParser.check(
        "look",
        ReportFileParser.read(file(frontMatter)).value().orElseThrow(),
        sessions,
        Set.of(),
        Set.of("report"),
        name -> false);
  }

  private static ReportPlan plan(String frontMatter) {
    return Given.good(check(frontMatter));
  }

  private static List<String> problems(String frontMatter) {
    assertThat(check(frontMatter).isUsable()).isFalse();
    return Given.sentences(check(frontMatter));
  }

  private static Checked<ReportPlan> check(String frontMatter) {
    return ReportPlanParser.check(
        "look",
        ReportFileParser.read(file(frontMatter)).value().orElseThrow(),
        Set.of("one", "two", "three"),
        Set.of("ring", "hill"),
        Set.of("report", "short"),
        name -> false);
  }

  private static InputFile file(String frontMatter) {
    String text = "---\n" + frontMatter + "---\nBody\n";
    return new InputFile("reports/look.md", text.getBytes(StandardCharsets.UTF_8));
  }
}
