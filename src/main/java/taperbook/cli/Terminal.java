package taperbook.cli;

import java.util.Map;

/**
 * The terminal that messages are written to. The launcher detects it, because Java can only tell
 * whether both input and results are connected to a terminal.
 *
 * @param messages true if progress and problems go to a terminal
 * @param results true if results go to a terminal
 * @param width its line width, characters
 */
public record Terminal(boolean messages, boolean results, int width) {
  /** Default line width, characters. */
  public static final int DEFAULT_WIDTH = 100;

  /** No terminal: files and pipes. */
  public static final Terminal NONE = new Terminal(false, false, DEFAULT_WIDTH);

  private static final int MIN_WIDTH = 40;
  private static final int MAX_WIDTH = 120;

  /** Limits the width for readability: long lines are hard to follow. */
  public Terminal {
    width = Math.max(MIN_WIDTH, Math.min(MAX_WIDTH, width));
  }

  /** Returns the terminal that the launcher detected for this process. */
  static Terminal ofProcess(Map<String, String> environment) {
    boolean plain = environment.getOrDefault("TERM", "").equals("dumb");
    int detected = Integer.getInteger("taperbook.width", 0);
    return new Terminal(
        Boolean.getBoolean("taperbook.terminal") && !plain,
        Boolean.getBoolean("taperbook.results") && !plain,
        detected > 0 ? detected : DEFAULT_WIDTH);
  }
}
