package taperbook.output.article;

import freemarker.cache.NullCacheStorage;
import freemarker.cache.StringTemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.core._CoreAPI;
import freemarker.template.Configuration;
import freemarker.template.SimpleScalar;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import taperbook.diagnostics.Checked;
import taperbook.diagnostics.Problem;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.SourceLocation;
import taperbook.i18n.Texts;

/**
 * Executes page templates in a sandbox. They access only the given texts: no classes, files or
 * methods of Java objects. Escapes their output for HTML and sets curly apostrophes.
 */
public final class RestrictedTemplates {
  private static final String FOLDER = "templates/";
  private static final int MOST_OF_A_MESSAGE = 200;
  private static final int MOST_PROBLEMS = 1000;
  private static final Pattern BLAMED = Pattern.compile("==> ([^\n]*?) +\\[in ");
  private final Configuration configuration;

  /**
   * Creates templates that can include each other.
   *
   * @param texts text by file name
   */
  public RestrictedTemplates(Map<String, String> texts) {
    StringTemplateLoader loader = new StringTemplateLoader();
    texts.forEach(loader::putTemplate);
    this.configuration = restricted();
    configuration.setTemplateLoader(loader);
    configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
    configuration.setSharedVariable("language", new SimpleScalar(Texts.of("page.language")));
  }

  /** Returns a configuration that exposes nothing but the model. */
  static Configuration restricted() {
    Configuration configuration = new CountedConfiguration();
    configuration.setObjectWrapper(new RecordWrapper());
    configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    configuration.setAPIBuiltinEnabled(false);
    configuration.setLocalizedLookup(false);
    configuration.setLocale(Locale.ROOT);
    configuration.setTimeZone(TimeZone.getTimeZone("UTC"));
    configuration.setNumberFormat("computer");
    configuration.setDefaultEncoding(StandardCharsets.UTF_8.name());
    configuration.setInterpolationSyntax(Configuration.DOLLAR_INTERPOLATION_SYNTAX);
    configuration.setTabSize(1);
    // FreeMarker's cache would report a broken template only the first time.
    configuration.setCacheStorage(NullCacheStorage.INSTANCE);
    configuration.setLogTemplateExceptions(false);
    configuration.setWrapUncheckedExceptions(true);
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.IGNORE_HANDLER);
    return configuration;
  }

  /**
   * Renders a template, or returns every problem in it.
   *
   * @param name file name of the template
   * @param model the template model
   */
  public Checked<String> page(String name, Map<String, Object> model) {
    return filled(
            () -> configuration.getTemplate(name),
            model,
            new ArrayList<>(),
            (template, line, column, message) ->
                broken(place(template == null ? name : template, line, column), message))
        .then(page -> Checked.good(Apostrophes.set(page)));
  }

  /** Creates the problem of a template. */
  @FunctionalInterface
  interface Blame {
    /**
     * Returns a problem.
     *
     * @param template file name of the template; null if it is not known
     * @param line line in the template, or 0
     * @param column column in the line, or 0
     */
    Problem problem(@Nullable String template, int line, int column, String message);
  }

  /**
   * Executes a template within limits, or returns every problem in it.
   *
   * @param problems those that the model adds during execution
   */
  static Checked<String> filled(
      BoundedRun.Parse parse, Map<String, Object> model, List<Problem> problems, Blame blame) {
    BoundedText out = new BoundedText();
    try {
      Optional<Template> template = BoundedRun.parsed(parse);
      if (template.isEmpty()) {
        return Checked.refused(List.of(blame.problem(null, 0, 0, BoundedRun.TOO_DEEP)));
      }
      var environment = template.get().createProcessingEnvironment(model, out);
      environment.setTemplateExceptionHandler(
          (failure, where, writer) -> {
            // Continues, unless there are too many problems to be useful.
            if (problems.size() >= MOST_PROBLEMS) {
              throw failure;
            }
            problems.add(problem(failure, blame));
          });
      Optional<String> endless = BoundedRun.run(environment::process);
      if (endless.isPresent()) {
        return Checked.refused(List.of(blame.problem(null, 0, 0, endless.get())));
      }
    } catch (ParseException e) {
      problems.add(
          blame.problem(
              e.getTemplateName(), e.getLineNumber(), e.getColumnNumber(), e.getEditorMessage()));
    } catch (TemplateException e) {
      problems.add(problem(e, blame));
    } catch (BoundedText.TooLong e) {
      problems.add(blame.problem(null, 0, 0, e.words()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Checked.of(out.toString(), problems.stream().distinct().toList());
  }

  /**
   * Configuration whose templates, including included ones, count their steps with {@link
   * BoundedRun}. Caches successfully parsed templates, as several pages include the same ones.
   */
  private static final class CountedConfiguration extends Configuration {
    private final Map<String, Template> kept = new ConcurrentHashMap<>();

    CountedConfiguration() {
      super(VERSION_2_3_34);
    }

    @Override
    public Template getTemplate(
        String name,
        Locale locale,
        Object condition,
        String encoding,
        boolean parsed,
        boolean ignoreMissing)
        throws IOException {
      Template known = parsed ? kept.get(name) : null;
      if (known != null) {
        return known;
      }
      Template template =
          super.getTemplate(name, locale, condition, encoding, parsed, ignoreMissing);
      if (template != null) {
        _CoreAPI.addThreadInterruptedChecks(template);
        if (parsed) {
          kept.put(name, template);
        }
      }
      return template;
    }
  }

  private static Problem problem(TemplateException failure, Blame blame) {
    Integer line = failure.getLineNumber();
    Integer column = failure.getColumnNumber();
    return blame.problem(
        failure.getTemplateSourceName(),
        line == null ? 0 : line,
        column == null ? 0 : column,
        failure.getMessageWithoutStackTop());
  }

  private static SourceLocation place(String name, int line, int column) {
    String file = FOLDER + name;
    return line < 1
        ? SourceLocation.file(file)
        : new SourceLocation(file, line, Math.max(column, 0));
  }

  private static Problem broken(SourceLocation place, String message) {
    return new Problem(
        ProblemCode.TEMPLATE_BROKEN,
        place,
        Texts.of("article.common.instruction_that_cannot_be_carried", shortened(message)),
        Texts.of("article.restricted_templates.template_in_freemarker_s_language"),
        Texts.of("article.restricted_templates.correct_template_there_or_take"));
  }

  /** Returns the first sentence of a message on one line, and its subject. */
  static String shortened(String message) {
    String text = message.strip();
    String line =
        text.lines()
            .findFirst()
            .orElse(Texts.of("article.restricted_templates.no_message"))
            .strip();
    Matcher blamed = BLAMED.matcher(text);
    if (blamed.find()) {
      line = line.replaceFirst("[:,]?( ==> .*)?$", "") + ": " + blamed.group(1).strip();
    }
    line = line.replaceFirst(":( \u2026)?$", "").replaceAll(" +", " ");
    return line.length() <= MOST_OF_A_MESSAGE
        ? line
        : line.substring(0, MOST_OF_A_MESSAGE - 1) + "\u2026";
  }
}
