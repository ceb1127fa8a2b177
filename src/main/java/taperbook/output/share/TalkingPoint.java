package taperbook.output.share;

import java.util.List;

/**
 * Something to say and to show at a moment of the session.
 *
 * @param seconds when it applies, time since plugging in, s
 * @param caption what stands on screen, at most {@link #LONGEST_CAPTION} characters
 * @param words what can be said, in full sentences
 * @param ids the numbers that it rests on
 */
record TalkingPoint(double seconds, String caption, String words, List<String> ids) {
  /** What a viewer reads at a glance, in characters. Our own choice: two thirds of a line. */
  static final int LONGEST_CAPTION = 42;

  /** Takes the first caption that is short enough, or cuts the last one. */
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

  /** Copies the ids and checks the caption. */
  TalkingPoint {
    ids = List.copyOf(ids);
    if (caption.length() > LONGEST_CAPTION || !(seconds >= 0)) {
      throw new IllegalArgumentException("no such point: " + seconds + " s, " + caption);
    }
  }
}
