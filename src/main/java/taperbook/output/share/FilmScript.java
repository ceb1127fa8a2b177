package taperbook.output.share;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.output.article.PlainMarkdown;
import taperbook.output.view.FactTexts;
import taperbook.plan.ReportPlan;
import taperbook.result.ReportResult;
import taperbook.session.ConditionItem;
import taperbook.session.Fact;
import taperbook.session.Session;

/** Writes {@code film/script.md}: text and pictures for a film, with time codes. */
public final class FilmScript {
  private static final List<ConditionItem> BEFORE =
      List.of(
          ConditionItem.STATION_RATED_POWER,
          ConditionItem.STATION_SHARED,
          ConditionItem.AMBIENT_TEMPERATURE,
          ConditionItem.BATTERY_TEMPERATURE_AT_START,
          ConditionItem.PRECONDITIONED,
          ConditionItem.PRECONDITIONING_TIME);

  private final ReportResult result;
  private final LocalDate day;
  private final OptionalInt offset;

  /**
   * Creates the script of one report.
   *
   * @param date date to use if the report states none
   */
  public FilmScript(ReportResult result, LocalDate date) {
    this.result = result;
    this.offset = result.plan().style().film().offsetSeconds();
    this.day = result.plan().heading().published().orElse(date);
  }

  /** Returns the file as UTF-8. */
  public byte[] bytes() {
    List<String> lines = new ArrayList<>();
    heading(lines);
    before(lines);
    TalkingPoints.of(result).forEach(point -> point(lines, point));
    caveats(lines);
    return (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8);
  }

  private void heading(List<String> lines) {
    ReportPlan.Heading heading = result.plan().heading();
    lines.add("# " + Texts.of("film.script", PlainMarkdown.of(heading.title())));
    lines.add("");
    String date = NumberFormatter.date(day) + ".";
    lines.add(
        heading.author().isEmpty()
            ? date
            : Texts.of("page.film_script.by", PlainMarkdown.of(heading.author()), date));
    lines.add("");
    lines.add(
        Texts.of(
            "page.film_script.time_codes_are_those_of",
            offset.isPresent()
                ? Texts.of(
                    "page.film_script.that_is_of_film_whose",
                    NumberFormatter.timeCode(offset.getAsInt()))
                : Texts.of("page.film_script.add_time_at_which_that")));
    lines.add("");
    lines.add(Texts.of("page.film_script.caution_never_film_read_displays"));
    lines.add("");
  }

  /** Adds the conditions known before the session. */
  private void before(List<String> lines) {
    Session session = result.main().session();
    lines.add("## " + Texts.of("film.before"));
    lines.add("");
    lines.add("- " + PlainMarkdown.of(FactTexts.subject(session)));
    for (ConditionItem item : BEFORE) {
      session.conditions().known(item).ifPresent(fact -> lines.add("- " + fact(item, fact)));
    }
    lines.add("");
  }

  private static String fact(ConditionItem item, Fact fact) {
    return FactTexts.capital(item.words())
        + ": "
        + PlainMarkdown.of(FactTexts.value(fact))
        + " ("
        + fact.howKnown().words()
        + ")";
  }

  private void point(List<String> lines, TalkingPoint point) {
    String code = NumberFormatter.timeCode(point.seconds());
    lines.add(
        "## "
            + (offset.isPresent()
                ? Texts.of(
                    "film.code",
                    code,
                    NumberFormatter.timeCode(offset.getAsInt() + point.seconds()))
                : code));
    lines.add("");
    lines.add("- " + Texts.of("film.on_screen", PlainMarkdown.of(point.caption())));
    lines.add("- " + Texts.of("film.say", PlainMarkdown.of(point.words())));
    lines.add("- " + Texts.of("film.rests_on", "`" + String.join("`, `", point.ids()) + "`"));
    lines.add("");
  }

  private void caveats(List<String> lines) {
    if (!result.main().caveats().isEmpty()) {
      lines.add("## " + Texts.of("film.caveats"));
      lines.add("");
      result.main().caveats().forEach(c -> lines.add("- " + PlainMarkdown.of(c.sentence())));
    }
    while (lines.get(lines.size() - 1).isEmpty()) {
      lines.remove(lines.size() - 1);
    }
  }
}
