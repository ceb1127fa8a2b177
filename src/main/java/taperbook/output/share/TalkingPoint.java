package taperbook.output.share;

import java.util.List;

/**
 * Text to say and show at a moment of the session.
 *
 * @param seconds when it applies, time since plugging in, s
 * @param caption text on screen, at most {@link #LONGEST_CAPTION} characters
 * @param words spoken text, in full sentences
 * @param ids the numbers that it uses
 */
record TalkingPoint(double seconds, String caption, String words, List<String> ids) {
  /** Maximum caption length in characters: two thirds of a line, a choice of this program. */
  static final int LONGEST_CAPTION = 42;

  /** Returns the first caption that is short enough, or truncates the last one. */
  static String fitting(List<String> captions) {
    String last = "";
    for (String caption : captions) {
      last = caption.replace('\u00a0', ' ');
      if (last.length() <= LONGEST_CAPTION) {
        return last;
      }
    }
    return last.substring(0, LONGEST_CAPTION - 1).stripTrailing() + "\u2026";
  }

  /** Validates the caption. */
  TalkingPoint {
    ids = List.copyOf(ids);
    if (caption.length() > LONGEST_CAPTION || !(seconds >= 0)) {
      throw new IllegalArgumentException("no such point: " + seconds + " s, " + caption);
    }
  }
}
