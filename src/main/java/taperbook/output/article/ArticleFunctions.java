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
import java.util.function.Function;
import taperbook.diagnostics.NearestNames;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.Quoted;
import taperbook.diagnostics.SourceLocation;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Joined;
import taperbook.i18n.Texts;
import taperbook.plan.ReportPlan;
import taperbook.result.Numbers;
import taperbook.result.ReportNumber;

/**
 * The functions of an article: {@code number}, {@code about}, {@code range}, {@code spread}, {@code
 * both}, {@code table}, {@code fact}, {@code date} and {@code figure}. An unknown name adds a
 * problem at its location, and processing continues.
 */
final class ArticleFunctions {
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
        ArticleFunction.TABLE.word(), onStated(StatedFunctions::table),
        ArticleFunction.FACT.word(), onStated(StatedFunctions::fact),
        ArticleFunction.DATE.word(), onStated(StatedFunctions::date),
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

  /** Returns the result of a function of {@link StatedFunctions} for one or two texts. */
  private TemplateMethodModelEx onStated(Stated function) {
    return arguments -> {
      List<String> texts = texts(arguments, 2);
      String second = texts.size() < 2 ? "" : texts.get(1);
      return function.apply(new StatedFunctions(source, this::unknown), texts.get(0), second);
    };
  }

  /** One of the functions of {@link StatedFunctions}. */
  @FunctionalInterface
  private interface Stated {
    String apply(StatedFunctions functions, String name, String second);
  }

  private void unknown(String name, String expected, List<String> known) {
    problems.add(unknown(ProblemCode.NAME_UNKNOWN, name, expected, known));
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
      List<String> known = List.copyOf(source.sessions().keySet());
      problems.add(
          unknown(
              ProblemCode.NAME_UNKNOWN,
              name,
              Texts.of("article.article_functions.session_of_this_report"),
              known));
    }
    return found;
  }

  private Optional<ReportNumber> number(Numbers session, String id) {
    Optional<ReportNumber> found = session.find(id);
    if (found.isEmpty()) {
      List<String> known = session.all().stream().map(ReportNumber::id).toList();
      problems.add(
          unknown(
              ProblemCode.NUMBER_UNKNOWN,
              id,
              Texts.of("article.article_functions.id_of_number_of_this"),
              known));
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

  private Problem unknown(ProblemCode code, String name, String expected, List<String> known) {
    List<String> near = NearestNames.names(name, known);
    return new Problem(
        code,
        here(),
        Quoted.of(name),
        expected,
        near.isEmpty()
            ? advice(code, known)
            : Texts.of("article.article_functions.write", Joined.or(near)));
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
      ReportPlan.Article article,
      @org.jspecify.annotations.Nullable Integer line,
      @org.jspecify.annotations.Nullable Integer column) {
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
