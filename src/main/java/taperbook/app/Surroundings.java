package taperbook.app;

import java.util.Map;

/**
 * What the process tells a command.
 *
 * @param environment environment variables
 * @param terminal true if messages go to a terminal, where a line may be overwritten
 */
public record Surroundings(Map<String, String> environment, boolean terminal) {
  /** Copies the environment. */
  public Surroundings {
    environment = Map.copyOf(environment);
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
