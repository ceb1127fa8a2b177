package taperbook.cli;

import java.util.Map;

/**
 * Where what is said is seen. The launcher finds it out, since Java itself can tell only whether
 * input and results both are at a terminal.
 *
 * @param messages true if progress and problems are seen on a terminal
 * @param results true if results are seen on a terminal
 * @param width characters in a line of it
 */
public record Terminal(boolean messages, boolean results, int width) {
  /** Characters in a line where nothing else is known. */
  public static final int USUAL_WIDTH = 100;

  /** No terminal at all: files and pipes. */
  public static final Terminal NONE = new Terminal(false, false, USUAL_WIDTH);

  private static final int LEAST_WIDTH = 40;
  private static final int MOST_WIDTH = 120;

  /** Keeps the width to what can be read: lines that are too long are hard to follow. */
  public Terminal {
    width = Math.max(LEAST_WIDTH, Math.min(MOST_WIDTH, width));
  }

  /** What the launcher told of this process. */
  static Terminal ofProcess(Map<String, String> environment) {
    boolean plain = environment.getOrDefault("TERM", "").equals("dumb");
    int told = Integer.getInteger("taperbook.width", 0);
    return new Terminal(
        Boolean.getBoolean("taperbook.terminal") && !plain,
        Boolean.getBoolean("taperbook.results") && !plain,
        told > 0 ? told : USUAL_WIDTH);
  }
}
