package taperbook.input.cell;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column head taken apart: {@code quantity [unit]}.
 *
 * @param name the name in plain form, letter case and extra spaces taken off
 * @param unit the unit as written between square brackets; empty if there is none
 * @param inRoundBrackets what is written between round brackets at the end; empty if nothing
 */
public record ColumnHeader(String name, String unit, String inRoundBrackets) {
  private static final Pattern SQUARE = Pattern.compile("([^\\[\\]]*)\\[([^\\[\\]]*)\\]");
  private static final Pattern ROUND = Pattern.compile("([^()]*)\\(([^()]*)\\)");

  public static ColumnHeader of(String written) {
    String head = written.strip();
    Matcher square = SQUARE.matcher(head);
    if (square.matches()) {
      return new ColumnHeader(NormalizedName.of(square.group(1)), square.group(2).strip(), "");
    }
    Matcher round = ROUND.matcher(head);
    if (round.matches()) {
      return new ColumnHeader(NormalizedName.of(round.group(1)), "", round.group(2).strip());
    }
    return new ColumnHeader(NormalizedName.of(head), "", "");
  }
}
