package taperbook.output.article;

import freemarker.template.Template;
import freemarker.template.TemplateException;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/**
 * Executes a template with a limit on its steps, so that an endless loop or recursion becomes a
 * problem. A step is one iteration of a loop or one macro call.
 */
final class BoundedRun extends Thread {
  /** A library of ten thousand sessions uses a hundredth of this. */
  static final long MOST_STEPS = 30_000_000;

  private static final long MOST_MILLISECONDS = 300_000;
  private static final long STACK_BYTES = 8L << 20;

  /** Problem text for instructions that are nested too deeply to be parsed. */
  static final String TOO_DEEP = "instructions stand within each other too deep";

  /** The task to execute. */
  interface Work {
    void run() throws TemplateException, IOException;
  }

  /** The parsing task. */
  interface Parse {
    Template parse() throws IOException;
  }

  private final Work work;
  private long steps;
  private @Nullable Throwable failure;

  private BoundedRun(Work work) {
    super(null, null, "template", STACK_BYTES);
    this.work = work;
    setDaemon(true);
  }

  /** Runs to completion, or returns the reason for the failure. */
  static Optional<String> run(Work work) throws TemplateException, IOException {
    BoundedRun run = new BoundedRun(work);
    run.start();
    try {
      run.join(MOST_MILLISECONDS);
    } catch (InterruptedException e) {
      throw new IllegalStateException("interrupted while a template runs", e);
    }
    return run.isAlive() ? Optional.of("it does not end") : run.outcome();
  }

  /** Parses a template; empty if it is nested too deeply. */
  static Optional<Template> parsed(Parse parse) throws TemplateException, IOException {
    AtomicReference<Template> parsed = new AtomicReference<>();
    run(() -> parsed.set(parse.parse()));
    return Optional.ofNullable(parsed.get());
  }

  private Optional<String> outcome() throws TemplateException, IOException {
    if (steps > MOST_STEPS) {
      return Optional.of("it takes more than " + MOST_STEPS + " steps");
    }
    if (failure instanceof StackOverflowError) {
      return Optional.of("it calls itself without end");
    }
    if (failure instanceof OutOfMemoryError) {
      return Optional.of("it needs more memory than there is");
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

  /** The template engine calls this at each step. */
  @Override
  public boolean isInterrupted() {
    return ++steps > MOST_STEPS || super.isInterrupted();
  }

  @Override
  public void run() {
    try {
      work.run();
    } catch (TemplateException | IOException | RuntimeException e) {
      failure = e;
    } catch (StackOverflowError | OutOfMemoryError e) {
      failure = e;
    }
  }
}
