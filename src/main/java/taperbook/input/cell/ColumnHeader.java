package taperbook.input.cell;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A parsed column header: {@code quantity [unit]}.
 *
 * @param name the normalized name: lower case, single spaces
 * @param unit the unit in square brackets; empty if there is none
 * @param inRoundBrackets the text in parentheses at the end; empty if there is none
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
