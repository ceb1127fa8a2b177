package taperbook.output.article;

import freemarker.template.Template;
import freemarker.template.TemplateException;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import taperbook.diagnostics.BoundedTask;
import taperbook.i18n.Texts;

/**
 * Executes a template with a limit on its steps, so that an endless loop or recursion becomes a
 * problem. A step is one iteration of a loop or one macro call.
 */
final class BoundedRun {
  /** A library of ten thousand sessions uses a hundredth of this. */
  static final long MOST_STEPS = 30_000_000;

  private static final int MOST_SECONDS = 300;
  private static final long STACK_BYTES = 8L << 20;

  /** Problem text for instructions that are nested too deeply to be parsed. */
  static final String TOO_DEEP =
      Texts.of("article.bounded_run.instructions_stand_within_each_other");

  private BoundedRun() {}

  /** The task to execute. */
  interface Work {
    void run() throws TemplateException, IOException;
  }

  /** The parsing task. */
  interface Parse {
    Template parse() throws IOException;
  }

  /** Runs to completion, or returns the reason for the failure. */
  static Optional<String> run(Work work) throws TemplateException, IOException {
    AtomicLong steps = new AtomicLong();
    Throwable failure = null;
    try {
      BoundedTask.<Boolean, Exception>within(
          MOST_SECONDS,
          BoundedTask.ANY_MEMORY,
          task -> counting(steps, task),
          () -> {
            work.run();
            return true;
          });
    } catch (BoundedTask.LimitExceeded e) {
      return Optional.of(Texts.of("article.bounded_run.it_does_not_end"));
    } catch (Exception | StackOverflowError | OutOfMemoryError e) {
      failure = e;
    }
    return steps.get() > MOST_STEPS
        ? Optional.of(Texts.of("article.bounded_run.it_takes_more_than_steps", MOST_STEPS))
        : reason(failure);
  }

  /** Parses a template; empty if it is nested too deeply. */
  static Optional<Template> parsed(Parse parse) throws TemplateException, IOException {
    AtomicReference<Template> parsed = new AtomicReference<>();
    run(() -> parsed.set(parse.parse()));
    return Optional.ofNullable(parsed.get());
  }

  /** Returns a thread that counts steps: the template engine calls its method at each of them. */
  private static Thread counting(AtomicLong steps, Runnable task) {
    return new Thread(null, task, "template", STACK_BYTES) {
      @Override
      public boolean isInterrupted() {
        return steps.incrementAndGet() > MOST_STEPS || super.isInterrupted();
      }
    };
  }

  private static Optional<String> reason(@Nullable Throwable failure)
      throws TemplateException, IOException {
    if (failure instanceof StackOverflowError) {
      return Optional.of(Texts.of("article.bounded_run.it_calls_itself_without_end"));
    }
    if (failure instanceof OutOfMemoryError) {
      return Optional.of(Texts.of("article.bounded_run.it_needs_more_memory_than"));
    }
    if (failure instanceof TemplateException e) {
      throw e;
    }
    if (failure instanceof IOException e) {
      throw e;
    }
    if (failure instanceof ArticleMarkdown.TooDeep e) {
      throw e;
    }
    if (failure != null) {
      throw new IllegalStateException("a template failed", failure);
    }
    return Optional.empty();
  }
}
