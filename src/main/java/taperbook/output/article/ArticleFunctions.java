package taperbook.output.article;

import freemarker.template.SimpleScalar;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateScalarModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import taperbook.diagnostics.NearestNames;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.Quoted;
import taperbook.diagnostics.SourceLocation;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Joined;
import taperbook.i18n.Texts;
import taperbook.output.view.ArticleTable;
import taperbook.plan.ReportPlan;
import taperbook.result.Numbers;
import taperbook.result.ReportNumber;

/**
 * The functions of an article: {@code number}, {@code about}, {@code range}, {@code spread}, {@code
 * both}, {@code table}, {@code fact}, {@code date} and {@code figure}. An unknown name adds a
 * problem at its location, and processing continues.
 */
final class ArticleFunctions {
  private static final String VALUE = "value";
  private static final String RANGE = "range";

  private final ArticleSource source;
  private final NumberFormatter formatter;
  private final Set<String> figures;
  private final List<Problem> problems = new ArrayList<>();

  ArticleFunctions(ArticleSource source, Set<String> figures) {
    this.source = source;
    this.formatter = new NumberFormatter(source.units());
    this.figures = figures;
  }

  /** Returns every name that was not found, in the order of the article. */
  List<Problem> problems() {
    return problems;
  }

  Map<String, Object> model() {
    return Map.of(
        ArticleFunction.NUMBER.word(), onNumber(formatter::value),
        ArticleFunction.ABOUT.word(), onNumber(formatter::about),
        ArticleFunction.RANGE.word(), onNumber(formatter::range),
        ArticleFunction.SPREAD.word(), onNumber(this::spread),
        ArticleFunction.BOTH.word(), onNumber(formatter::outcome),
        ArticleFunction.TABLE.word(), onStated(this::table),
        ArticleFunction.FACT.word(), onStated(this::fact),
        ArticleFunction.DATE.word(), onStated(this::date),
        ArticleFunction.FIGURE.word(),
            (TemplateMethodModelEx) arguments -> figure(texts(arguments, 1).get(0)));
  }

  private TemplateMethodModelEx onNumber(Function<ReportNumber, String> words) {
    return arguments -> {
      List<String> texts = texts(arguments, 2);
      Optional<Numbers> session = texts.size() < 2 ? main() : session(texts.get(1));
      return session
          .flatMap(s -> number(s, texts.get(0)))
          .map(n -> n.withheld().map(r -> withheld(n, r)).orElseGet(() -> words.apply(n)))
          .map(ArticleFunctions::escaped)
          .orElse("");
    };
  }

  /** Adds a notice for a withheld number, as the sentence around it needs rewording. */
  private String withheld(ReportNumber number, String reason) {
    problems.add(
        new Problem(
            ProblemCode.NUMBER_WITHHELD,
            here(),
            Quoted.of(number.id()),
            Texts.of("article.article_functions.number_that_readings_support_of", reason),
            Texts.of("article.article_functions.write_sentence_without_it")));
    return Texts.of("article.article_functions.withheld", reason);
  }

  private String spread(ReportNumber number) {
    return formatter.spread(number).orElse("");
  }

  /** Returns a function of one or two texts. */
  private TemplateMethodModelEx onStated(BinaryOperator<String> function) {
    return arguments -> {
      List<String> texts = texts(arguments, 2);
      return function.apply(texts.get(0), texts.size() < 2 ? "" : texts.get(1));
    };
  }

  /**
   * Returns a table in Markdown.
   *
   * @param name its name
   * @param shown which part of each number: {@code value}, {@code range}, or {@code both}; empty
   *     means {@code both}
   */
  private String table(String name, String shown) {
    List<String> choices = List.of(VALUE, RANGE, ArticleFunction.BOTH.word());
    if (!shown.isEmpty() && !choices.contains(shown)) {
      unknown(shown, Texts.of("article.stated_functions.what_table_shows_of_each"), choices);
      return "";
    }
    Map<String, ArticleTable> tables = source.stated().tables();
    ArticleTable table = tables.get(name);
    if (table == null) {
      unknown(
          name,
          Texts.of("article.stated_functions.name_of_table_of_this"),
          List.copyOf(tables.keySet()));
      return "";
    }
    return table.rows().isEmpty()
        ? Texts.of("article.stated_functions.no_table_report_has_no")
        : text(table, shown);
  }

  private static String text(ArticleTable table, String shown) {
    List<String> lines = new ArrayList<>();
    lines.add(line(table.head().stream().map(ArticleFunctions::escaped).toList()));
    lines.add(line(table.head().stream().map(h -> "---").toList()));
    for (List<ArticleTable.Cell> row : table.rows()) {
      lines.add(line(row.stream().map(c -> escaped(cell(c, shown))).toList()));
    }
    return "\n\n" + String.join("\n", lines) + "\n\n";
  }

  private static String line(List<String> cells) {
    return cells.stream().collect(Collectors.joining(" | ", "| ", " |"));
  }

  private static String cell(ArticleTable.Cell cell, String shown) {
    if (cell.range().isEmpty() || shown.equals(VALUE)) {
      return cell.value();
    }
    return shown.equals(RANGE) ? cell.range() : cell.value() + " (" + cell.range() + ")";
  }

  /**
   * Returns a stated fact.
   *
   * @param item an item of conditions or of a range test
   * @param of session or range test; empty for the reported session
   */
  private String fact(String item, String of) {
    Map<String, Map<String, String>> facts = source.stated().facts();
    String name = of.isEmpty() ? source.mainSession() : of;
    Map<String, String> items = facts.get(name);
    if (items == null) {
      unknown(
          name,
          Texts.of("article.stated_functions.session_or_range_test_of"),
          List.copyOf(facts.keySet()));
      return "";
    }
    String fact = items.get(item);
    if (fact == null) {
      unknown(
          item,
          Texts.of("article.stated_functions.item_that_is_stated_of", name),
          List.copyOf(items.keySet()));
      return "";
    }
    return escaped(fact);
  }

  /**
   * Returns a formatted date.
   *
   * @param what {@code published}, {@code session} or {@code drive}
   * @param of the session of the date or range test; empty for the reported one
   */
  private String date(String what, String of) {
    return switch (what) {
      case "published" ->
          source.stated().published().isEmpty()
              ? Texts.of("article.stated_functions.not_known")
              : source.stated().published();
      case "session" -> fact("date", of);
      case "drive" -> drive(of);
      default -> {
        unknown(
            what,
            Texts.of("article.stated_functions.name_of_date"),
            List.of("published", "session", "drive"));
        yield "";
      }
    };
  }

  private String drive(String of) {
    String session = of.isEmpty() ? source.mainSession() : of;
    String test = source.stated().rangeTests().get(session);
    if (test == null) {
      List<String> known = List.copyOf(source.stated().rangeTests().keySet());
      unknown(session, Texts.of("article.stated_functions.session_with_range_test_of"), known);
      return "";
    }
    return fact("date", test);
  }

  private static List<String> texts(List<?> arguments, int most) throws TemplateModelException {
    List<String> texts = new ArrayList<>();
    for (Object argument : arguments) {
      if (argument instanceof TemplateScalarModel scalar) {
        texts.add(scalar.getAsString());
      }
    }
    if (texts.isEmpty() || texts.size() != arguments.size() || texts.size() > most) {
      throw new TemplateModelException(
          most == 1
              ? Texts.of("article.article_functions.one_name_in_quotes_is")
              : Texts.of("article.article_functions.name_in_quotes_and_perhaps"));
    }
    return texts;
  }

  /** Returns the numbers of the reported session; a library has no default session. */
  private Optional<Numbers> main() throws TemplateModelException {
    Optional<Numbers> main = source.numbersOf(source.mainSession());
    if (main.isEmpty()) {
      throw new TemplateModelException(
          Texts.of("article.article_functions.in_library_session_is_expected"));
    }
    return main;
  }

  private Optional<Numbers> session(String name) {
    Optional<Numbers> found = source.numbersOf(name);
    if (found.isEmpty()) {
      unknown(
          name,
          Texts.of("article.article_functions.session_of_this_report"),
          List.copyOf(source.sessions().keySet()));
    }
    return found;
  }

  private Optional<ReportNumber> number(Numbers session, String id) {
    Optional<ReportNumber> found = session.find(id);
    if (found.isEmpty()) {
      unknown(
          ProblemCode.NUMBER_UNKNOWN,
          id,
          Texts.of("article.article_functions.id_of_number_of_this"),
          session.all().stream().map(ReportNumber::id).toList());
    }
    return found;
  }

  private SimpleScalar figure(String id) {
    if (figures.contains(id)) {
      return new SimpleScalar("\n\n" + ArticleText.token(id) + "\n\n");
    }
    if (source.charts().contains(id)) {
      return new SimpleScalar(Texts.of("article.article_functions.no_chart_report_lacks_data"));
    }
    Set<String> known = new TreeSet<>(source.charts());
    known.addAll(figures);
    unknown(id, Texts.of("article.article_functions.name_of_chart"), List.copyOf(known));
    return new SimpleScalar("");
  }

  private void unknown(String name, String expected, List<String> known) {
    unknown(ProblemCode.NAME_UNKNOWN, name, expected, known);
  }

  private void unknown(ProblemCode code, String name, String expected, List<String> known) {
    List<String> near = NearestNames.names(name, known);
    problems.add(
        new Problem(
            code,
            here(),
            Quoted.of(name),
            expected,
            near.isEmpty()
                ? advice(code, known)
                : Texts.of("article.article_functions.write", Joined.or(near))));
  }

  private static String advice(ProblemCode code, List<String> known) {
    if (known.isEmpty()) {
      return Texts.of("article.article_functions.take_call_away");
    }
    return code == ProblemCode.NUMBER_UNKNOWN
        ? Texts.of(
            "article.article_functions.take_id_from_numbers_json", String.join(", ", first(known)))
        : Texts.of("article.article_functions.write_one_of", String.join(", ", known));
  }

  private static List<String> first(List<String> known) {
    return known.subList(0, Math.min(5, known.size()));
  }

  /** Returns the location of the call, which FreeMarker provides through an exception. */
  private SourceLocation here() {
    TemplateModelException probe = new TemplateModelException("place");
    return place(source.article(), probe.getLineNumber(), probe.getColumnNumber());
  }

  static SourceLocation place(
      ReportPlan.Article article, @Nullable Integer line, @Nullable Integer column) {
    if (line == null || line < 1) {
      return SourceLocation.file(article.file());
    }
    return new SourceLocation(
        article.file(), line + article.firstLine() - 1, column == null || column < 1 ? 0 : column);
  }

  /** Escapes Markdown characters in a printed number or reason. */
  static String escaped(String text) {
    return text.replaceAll("([\\\\`*_\\[\\]<>#|&~])", "\\\\$1").replace("\n", " ");
  }
}
