package taperbook.cli;

import java.util.Map;

/**
 * What the process tells a command.
 *
 * @param environment environment variables
 * @param terminal where what is said is seen
 * @param pulse time
 */
public record ProcessContext(Map<String, String> environment, Terminal terminal, WatchClock pulse) {
  /** Copies the environment. */
  public ProcessContext {
    environment = Map.copyOf(environment);
  }

  /** Those of this process. */
  public static ProcessContext ofProcess() {
    return new ProcessContext(
        System.getenv(), Terminal.ofProcess(System.getenv()), WatchClock.ofProcess());
  }

  /** True if {@code NO_COLOR} leaves colour to the terminal. */
  boolean colourAllowed() {
    return environment.getOrDefault("NO_COLOR", "").isEmpty();
  }
}
