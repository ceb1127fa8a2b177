package taperbook.prosecheck;

import java.util.Arrays;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import taperbook.result.ReportResult;
import taperbook.session.ConditionItem;

/**
 * Signs that a sentence does not state a measurement of the reported session: it refers to another
 * car or day, the manufacturer's claims, hypotheses, people in general, or something that did not
 * happen. If in doubt, the lists treat a sentence as such.
 */
final class Doubts {
  private static final Pattern OTHER =
      words(
          "last (?:year|month|week|time|winter|summer|spring|autumn|one)|\\w+ (?:year|month|week)s?"
              + " ago|previous\\w*|predecessor|former\\w*|earlier|older|old|other|others|rival\\w*"
              + "|sister|competitor\\w*|sibling|neighbour\\w*|next to us|beside us|elsewhere"
              + "|another (?:car|station|session|day|test|battery|charger|stall|site|driver)"
              + "|(?:first|second|third|new|newer|next|two|three|four) (?:batter|car|session|stop"
              + "|test|run|visit|revision|charge|attempt|try|one|station|version)\\w*|the second"
              + "|yesterday|day before|spring|autumn|at home|over (?:two|three|four|five|several)|ever|mine|yours|his|hers|theirs|winter|summer|frost|snow"
              + "|compared|than|against|both|successor|facelift|(?:cold|warm|hot|frozen) (?:battery|pack|car|day|morning|night)"
              + "|(?:the|that) same|(?:drive|trip|journey|way|road) (?:home|back|there|out)"
              + "|trailer|towing|roof box|fully loaded");
  private static final Pattern MAKER =
      words(
          "brochure\\w*|catalogue\\w*|leaflet|claim(?:s|ed)?|maker\\w*|manufacturer\\w*|promis\\w*"
              + "|advertis\\w*|official\\w*|on paper|data ?sheet|spec|specs|specification\\w*"
              + "|nominal\\w*|according to|stated|states?(?! of charge)|quoted|rated|rating|marketing|allegedly"
              + "|certified|homologat\\w*|press release|WLTP|EPA");
  private static final Pattern MIGHT_BE =
      words(
          "would|could|might|should|if|expect\\w*|hop(?:e|ed|ing)|imagin\\w*|suppos\\w*|unless"
              + "|perhaps|probably|in theory|theoretical\\w*|ought|wish\\w*|assum\\w*|predict\\w*"
              + "|estimat\\w*|guess\\w*|will|can|next time|tomorrow|ideal\\w*"
              + "|were (?:it|the|we)|had (?:it|we|the)");
  private static final Pattern MAY = Pattern.compile("\\bmay\\b");
  private static final Pattern GENERAL =
      words(
          "most (?!(?:it|we|that|the|of)\\b)\\w+|many|every|everyone|everybody|nobody|no one|people"
              + "|drivers|owners?|readers?|viewers?|usually|typically|often|always|generally"
              + "|normally|sometimes|rule of thumb|(?:an?|any|all) (?:electric )?(?:car|battery)s?"
              + "|they|is said|are said|cars|stations|chargers|batteries");
  private static final Pattern NEGATION =
      Pattern.compile(
          "(?i)n['\u2019]t\\b|\\b(?:not|never|no|nor|neither|without|fail\\w*|nowhere|hardly|barely"
              + "|nothing|cannot|none|instead of|far from)\\b(?! (?:less|more|fewer) than| quite)");
  private static final Pattern SAID_OF_RATED =
      Pattern.compile(
          "(?i)(?:on|by|of|with) (?:the |its )?rated range|(?:station|stall|charger)\\b[^.]{0,20}\\brated");
  private static final Pattern OURS = Pattern.compile("^\\s*(?:We|I|Our|My)\\b");
  private static final Pattern NAME =
      Pattern.compile("(?<![\\w'\u2019-])(?!Celsius|Fahrenheit)[A-Z][a-z][\\w'\u2019-]+");

  private final Set<String> ownNames;
  private final Set<String> otherNames;

  Doubts(ReportResult result) {
    this.ownNames =
        Stream.concat(
                names(result.main().session().vehicle()),
                result.main().session().conditions().text(ConditionItem.PLACE).stream()
                    .flatMap(Doubts::names))
            .collect(Collectors.toSet());
    this.otherNames =
        result.compared().stream()
            .flatMap(s -> names(s.session().vehicle()))
            .filter(n -> !ownNames.contains(n))
            .collect(Collectors.toSet());
  }

  private static Pattern words(String alternatives) {
    return Pattern.compile("(?i)(?<![\\w-])(?:" + alternatives + ")(?![\\w])");
  }

  private static Stream<String> names(String text) {
    return Arrays.stream(text.split("[^\\w'-]+", -1)).filter(n -> n.matches("[A-Z]\\w+"));
  }

  /**
   * Returns true if the text refers to another car or day, so that the text after it may do so,
   * too.
   */
  boolean refersElsewhere(String text) {
    return OTHER.matcher(withoutHedges(text)).find() || hasName(text);
  }

  /**
   * Returns true if the text refers to claims of the manufacturer or others, so that the text after
   * it may do so, too.
   */
  static boolean isReportedClaim(String text) {
    return MAKER.matcher(SAID_OF_RATED.matcher(text).replaceAll(" ")).find();
  }

  /** Returns true if the text begins with the tester's own actions or possessions. */
  static boolean isOwnAction(String text) {
    return OURS.matcher(text).find();
  }

  /** Returns true if the text names the car of the reported session. */
  boolean namesOwn(String text) {
    return NAME.matcher(text).results().anyMatch(m -> isOwn(m.group()));
  }

  /** Returns true if the sentence as a whole is not a statement of fact. */
  boolean isNotAssertion(String text) {
    boolean onRated = SAID_OF_RATED.matcher(text).find();
    return text.strip().endsWith("?")
        || (!onRated && MIGHT_BE.matcher(text).find())
        || MAY.matcher(text).find()
        || GENERAL.matcher(text).find();
  }

  /** Returns true if the text to the left of an amount negates it. */
  static boolean isNegated(String left) {
    return NEGATION.matcher(left).find();
  }

  private static String withoutHedges(String text) {
    return text.replaceAll("(?i)\\b(?:more|less|fewer) than\\b", " ");
  }

  /**
   * Returns true if the text contains a name other than that of the reported car or its station.
   */
  private boolean hasName(String text) {
    Matcher name = NAME.matcher(text);
    while (name.find()) {
      boolean opens =
          text.substring(0, name.start()).strip().isEmpty()
              || text.substring(0, name.start()).matches("(?s).*[:(\"\u201c]\\s*");
      if (otherNames.contains(bare(name.group())) || (!opens && !isOwn(name.group()))) {
        return true;
      }
    }
    return false;
  }

  private boolean isOwn(String name) {
    return ownNames.contains(bare(name));
  }

  private static String bare(String name) {
    return name.replaceAll("['\u2019]s?$", "");
  }
}
