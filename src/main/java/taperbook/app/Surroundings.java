package taperbook.app;

import java.util.Map;

/**
 * What the process tells a command.
 *
 * @param environment environment variables
 * @param terminal true if messages go to a terminal, where a line may be overwritten
 * @param pulse time
 */
public record Surroundings(Map<String, String> environment, boolean terminal, Pulse pulse) {
  /** Copies the environment. */
  public Surroundings {
    environment = Map.copyOf(environment);
  }

  /** Surroundings with the time of this process. */
  public Surroundings(Map<String, String> environment, boolean terminal) {
    this(environment, terminal, Pulse.ofProcess());
  }

  /** Those of this process. The launcher says whether standard error is a terminal. */
  static Surroundings ofProcess() {
    return new Surroundings(System.getenv(), Boolean.getBoolean("taperbook.terminal"));
  }

  /** True if colour may be used: on a terminal, and never with {@code NO_COLOR} set. */
  boolean colour() {
    return terminal && environment.getOrDefault("NO_COLOR", "").isEmpty();
  }
}
