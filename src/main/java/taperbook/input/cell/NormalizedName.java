package taperbook.input.cell;

import java.util.Locale;
import java.util.regex.Pattern;

/** Normalized form of names for comparison. */
public final class NormalizedName {
  private static final Pattern SPACES = Pattern.compile("[\\s\\u00a0]+");

  private NormalizedName() {}

  /** Returns the name in lower case, trimmed, with single spaces. */
  public static String of(String written) {
    return isPlain(written) ? written : made(written);
  }

  /** Returns true if a name is already normalized, as most are. */
  private static boolean isPlain(String written) {
    boolean afterSpace = true;
    for (int i = 0; i < written.length(); i++) {
      char c = written.charAt(i);
      if (!(c >= 'a' && c <= 'z') && (c != ' ' || afterSpace)) {
        return false;
      }
      afterSpace = c == ' ';
    }
    return written.isEmpty() || !afterSpace;
  }

  private static String made(String written) {
    return SPACES.matcher(written).replaceAll(" ").strip().toLowerCase(Locale.ROOT);
  }
}
