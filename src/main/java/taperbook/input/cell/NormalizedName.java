package taperbook.input.cell;

import java.util.Locale;
import java.util.regex.Pattern;

/** The plain form in which names written by hand are compared. */
public final class NormalizedName {
  private static final Pattern SPACES = Pattern.compile("[\\s\\u00a0]+");

  private NormalizedName() {}

  /** Lower case, no spaces around, single spaces inside. */
  public static String of(String written) {
    return isPlain(written) ? written : made(written);
  }

  /** True if a name has that form already, as most have. */
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
