package taperbook.cli;

import java.util.Map;

/**
 * The process environment of a command.
 *
 * @param environment environment variables
 * @param terminal the terminal that messages are written to
 * @param clock time
 */
public record ProcessContext(Map<String, String> environment, Terminal terminal, WatchClock clock) {
  /** Copies the environment. */
  public ProcessContext {
    environment = Map.copyOf(environment);
  }

  /** Returns the context of this process. */
  public static ProcessContext ofProcess() {
    return new ProcessContext(
        System.getenv(), Terminal.ofProcess(System.getenv()), WatchClock.ofProcess());
  }

  /** Returns true unless {@code NO_COLOR} disables colour. */
  boolean colourAllowed() {
    return environment.getOrDefault("NO_COLOR", "").isEmpty();
  }
}
