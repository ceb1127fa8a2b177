package taperbook.check.spelling;

import java.util.Locale;
import java.util.regex.Pattern;

/** The plain form in which names written by hand are compared. */
public final class Label {
  private static final Pattern SPACES = Pattern.compile("[\\s\\u00a0]+");

  private Label() {}

  /** Lower case, no spaces around, single spaces inside. */
  public static String of(String written) {
    return SPACES.matcher(written).replaceAll(" ").strip().toLowerCase(Locale.ROOT);
  }
}
