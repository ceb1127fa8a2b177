package taperbook.input.cell;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Texts;

/**
 * Parses the numbers of one file: plain decimal digits with a point as the decimal mark, or a comma
 * if it does not separate cells; all numbers of a file must use the same mark.
 */
public final class NumberParser {
  private static final Pattern NUMBER =
      Pattern.compile("([+-]?)([0-9]{0,40})(?:([.,])([0-9]{0,40}))?(?:[eE]([+-]?[0-9]{1,3}))?");

  /** Numbers with more digits are rounded, see {@link CellNumber#parse}. */
  private static final int MAX_PLAIN_DIGITS = 12;

  private static final Pattern WITH_TEXT =
      Pattern.compile("[+-]?[0-9]+(?:[.,][0-9]+)?\\s*[\\p{L}%\\u00b0/]+");
  private static final Set<String> NOTHING =
      Set.of(
          "-", "--", "\u2013", "\u2014", "?", "n/a", "na", "nan", "none", "null", "#n/a", "x",
          "unknown", "nil", "missing");

  private final boolean commaAllowed;
  private final ProblemCode code;
  private final ProblemLog log;
  private final String ifNothing;
  private final String unitPlace;
  private Optional<Grouping> grouping = Optional.empty();
  private boolean ambiguous;
  private String mark = "";
  private int markLine;

  private NumberParser(
      boolean commaAllowed, ProblemCode code, ProblemLog log, String ifNothing, String unitPlace) {
    this.commaAllowed = commaAllowed;
    this.code = code;
    this.log = log;
    this.ifNothing = ifNothing;
    this.unitPlace = unitPlace;
  }

  /** Creates a parser for readings. */
  public static NumberParser forCells(boolean commaAllowed, ProblemLog log) {
    return new NumberParser(
        commaAllowed,
        ProblemCode.CELL_NOT_A_NUMBER,
        log,
        Texts.of("input.common.leave_cell_empty"),
        Texts.of("input.number_parser.column_head"));
  }

  /** Creates a parser for readings with a stated decimal mark. */
  public static NumberParser forCells(char decimalMark, ProblemLog log) {
    NumberParser reader = forCells(decimalMark == ',', log);
    reader.mark = Character.toString(decimalMark);
    return reader;
  }

  /** Makes this parser accept a stated thousands separator and returns it. */
  public NumberParser grouping(Grouping stated) {
    grouping = Optional.of(stated);
    return this;
  }

  /**
   * Creates a parser for facts.
   *
   * @param ifNothing what to write instead of a word for no value
   */
  public static NumberParser forFacts(boolean commaAllowed, ProblemLog log, String ifNothing) {
    return new NumberParser(
        commaAllowed,
        ProblemCode.VALUE_NOT_UNDERSTOOD,
        log,
        ifNothing,
        Texts.of("input.number_parser.unit_column"));
  }

  boolean commaAllowed() {
    return commaAllowed;
  }

  /** Returns true if the mark of the last number may be a decimal mark or a thousands separator. */
  public boolean isAmbiguous() {
    return ambiguous && !isMarkStated();
  }

  private boolean isMarkStated() {
    return !mark.isEmpty() && markLine == 0;
  }

  /**
   * Parses a cell that is not empty; reports a problem and returns empty if it is not a number.
   *
   * @param expected description of valid content, such as {@code a number from 0 to 100 %}
   */
  public Optional<CellNumber> read(String cell, int line, int column, String expected) {
    int places = plainPlaces(cell);
    if (places >= 0
        && (places != Grouping.DIGITS || grouping.isEmpty())
        && (places == 0 || agrees(".", line))) {
      ambiguous = places == Grouping.DIGITS && Grouping.isAlike(cell);
      return Optional.of(new CellNumber(Double.parseDouble(cell), -places));
    }
    String minus = cell.replace('\u2212', '-');
    String text = grouping.map(g -> g.without(minus)).orElse(minus);
    var match = NUMBER.matcher(text);
    boolean number =
        match.matches()
            && (match.end(2) > match.start(2) || isDigits(match.group(4)))
            && Double.isFinite(Double.parseDouble(text.replace(',', '.')));
    String usedMark = number && match.group(3) != null ? match.group(3) : "";
    if (!number || (usedMark.equals(",") && !commaAllowed)) {
      log.add(code, line, column, Quoted.of(cell), expected, remedy(text));
      return Optional.empty();
    }
    if (!agrees(usedMark, line)) {
      log.add(
          code,
          line,
          column,
          Quoted.of(cell),
          Texts.of(
              "input.number_parser.decimal_mark",
              Quoted.of(mark),
              markLine == 0
                  ? Texts.of("input.number_parser.that_columns_csv_states")
                  : Texts.of("input.number_parser.as_on_line", markLine)),
          markLine == 0
              ? statedRemedy(text)
              : Texts.of("input.number_parser.write_all_numbers_of_file"));
      return Optional.empty();
    }
    ambiguous = Grouping.isAlike(text);
    return Optional.of(CellNumber.parse(text.replace(',', '.')));
  }

  /**
   * Returns the number of decimal places if a cell has at most 12 digits, with or without a minus
   * and a point in the middle; -1 for other text, which needs a pattern. Nearly all readings are
   * plain.
   */
  private static int plainPlaces(String cell) {
    int begin = cell.startsWith("-") ? 1 : 0;
    int point = cell.indexOf('.');
    int digits = cell.length() - begin - (point < 0 ? 0 : 1);
    if (digits < 1 || digits > MAX_PLAIN_DIGITS || point == begin || point == cell.length() - 1) {
      return -1;
    }
    for (int i = begin; i < cell.length(); i++) {
      if (i != point && (cell.charAt(i) < '0' || cell.charAt(i) > '9')) {
        return -1;
      }
    }
    return point < 0 ? 0 : cell.length() - 1 - point;
  }

  private static String statedRemedy(String text) {
    return Grouping.isAlike(text)
        ? Texts.of("input.number_parser.state_thousands_mark_in_columns")
        : Texts.of("input.number_parser.state_other_decimal_mark_in");
  }

  private static boolean isDigits(String text) {
    return text != null && !text.isEmpty();
  }

  private boolean agrees(String usedMark, int line) {
    if (mark.isEmpty() && !usedMark.isEmpty()) {
      mark = usedMark;
      markLine = line;
    }
    return usedMark.isEmpty() || usedMark.equals(mark);
  }

  private String remedy(String text) {
    if (NOTHING.contains(text.toLowerCase(Locale.ROOT))) {
      return ifNothing;
    }
    if (Grouping.isAlike(text)) {
      return Grouping.REMEDY;
    }
    if (!commaAllowed && text.contains(",") && NUMBER.matcher(text).matches()) {
      return Texts.of("input.common.write_decimal_point_or_part");
    }
    if (Grouping.isGrouped(text)) {
      return Texts.of("input.number_parser.write_digits_without_grouping_as");
    }
    if (WITH_TEXT.matcher(text).matches()) {
      return Texts.of("input.number_parser.write_number_alone_unit_stands", unitPlace);
    }
    return Texts.of("input.number_parser.write_plain_number_as_in", ifNothing);
  }
}
