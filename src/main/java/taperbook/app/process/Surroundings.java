package taperbook.app.process;

import java.util.Map;

/**
 * What the process tells a command.
 *
 * @param environment environment variables
 * @param terminal where what is said is seen
 * @param pulse time
 */
public record Surroundings(Map<String, String> environment, Terminal terminal, Pulse pulse) {
  /** Copies the environment. */
  public Surroundings {
    environment = Map.copyOf(environment);
  }

  /** Those of this process. */
  public static Surroundings ofProcess() {
    return new Surroundings(
        System.getenv(), Terminal.ofProcess(System.getenv()), Pulse.ofProcess());
  }

  /** True if {@code NO_COLOR} leaves colour to the terminal. */
  boolean colourAllowed() {
    return environment.getOrDefault("NO_COLOR", "").isEmpty();
  }
}
