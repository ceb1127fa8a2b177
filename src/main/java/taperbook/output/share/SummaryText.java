package taperbook.output.share;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import taperbook.i18n.Texts;
import taperbook.output.article.PlainMarkdown;
import taperbook.output.view.NumberView;
import taperbook.output.view.PageModel;
import taperbook.plan.Basis;

/**
 * Writes {@code share/summary.md}: the answer, the most severe caveats, the numbers of the first
 * page as far as they fit, and a reference to the report.
 */
public final class SummaryText {
  /** Maximum number of words, counting standalone symbols. */
  static final int MOST_WORDS = 120;

  /** Words reserved for individual parts. */
  private static final int MOST_OF_ANSWER = 55;

  private static final int MOST_OF_CAVEAT = 30;
  private static final int MOST_OF_TITLE = 18;
  private static final int MOST_OF_AUTHOR = 6;

  private final PageModel page;
  private final String answer;

  /**
   * Creates the summary of a report.
   *
   * @param page the model of its page
   * @param answer the answer at its top as plain text, may be empty
   */
  public SummaryText(PageModel page, String answer) {
    this.page = page;
    this.answer = answer;
  }

  /** Returns the file as UTF-8. */
  public byte[] bytes() {
    return (composed() + "\n").getBytes(StandardCharsets.UTF_8);
  }

  private String composed() {
    String first = PlainMarkdown.of(sentences(answer, MOST_OF_ANSWER));
    String last = PlainMarkdown.of(report());
    int room = MOST_WORDS - words(first) - words(last);
    List<String> caveats = new ArrayList<>();
    List<String> numbers = new ArrayList<>();
    List<String> facts = page.first().facts();
    if (!facts.isEmpty()) {
      String severest =
          Texts.of("share.note", PlainMarkdown.of(sentences(facts.get(0), MOST_OF_CAVEAT - 1)));
      room -= words(severest);
      caveats.add(severest);
    }
    for (NumberView number : page.first().numbers()) {
      String line = number.measured() ? PlainMarkdown.of(number(number)) : "";
      if (!line.isEmpty() && words(line) < room) {
        numbers.add("- " + line);
        room -= words(line) + 1;
      }
    }
    for (String fact : facts.subList(Math.min(1, facts.size()), facts.size())) {
      if (words(fact) <= room) {
        caveats.add(PlainMarkdown.of(fact));
        room -= words(fact);
      }
    }
    List<String> parts =
        List.of(first, String.join("\n", numbers), String.join(" ", caveats), last);
    return String.join("\n\n", parts.stream().filter(p -> !p.isEmpty()).toList());
  }

  /** Formats a number with its interval and, as distances have several, its basis. */
  private static String number(NumberView number) {
    String basis = number.origin().basis();
    String label = number.label();
    boolean named =
        Arrays.stream(Basis.values())
            .noneMatch(
                b ->
                    basis.equals(Texts.of("page.number_views.basis", b.words()))
                        && !label.contains(b.words()));
    return Texts.of(
        "share.number",
        named ? label : label + ", " + basis,
        number.amount().value(),
        number.amount().spread());
  }

  private String report() {
    PageModel.Report report = page.report();
    String title = cut(report.title(), MOST_OF_TITLE);
    String author = cut(report.author(), MOST_OF_AUTHOR);
    String date =
        page.corrected()
            .map(corrected -> Texts.of("share.corrected", report.date(), corrected))
            .orElse(report.date());
    return author.isEmpty()
        ? Texts.of("share.report", title, date)
        : Texts.of("share.report_by", title, author, date);
  }

  static int words(String text) {
    return text.isBlank() ? 0 : split(text).size();
  }

  private static List<String> split(String text) {
    return Arrays.asList(text.strip().split("[\\s\\u00a0]+", -1));
  }

  /** Returns as many whole sentences as fit; truncates a first sentence that is too long. */
  private static String sentences(String text, int most) {
    if (words(text) <= most) {
      return text;
    }
    List<String> kept = split(text).subList(0, most);
    for (int i = kept.size(); i > 0; i--) {
      if (kept.get(i - 1).endsWith(".")) {
        return String.join(" ", kept.subList(0, i));
      }
    }
    return cut(text, most);
  }

  private static String cut(String text, int most) {
    return words(text) <= most ? text : String.join(" ", split(text).subList(0, most)) + "\u2026";
  }
}
