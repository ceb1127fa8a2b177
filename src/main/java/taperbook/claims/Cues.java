package taperbook.claims;

import java.util.regex.Pattern;

/**
 * Words that tell which number is meant, as a tester's prose uses them: common usage, no source.
 */
final class Cues {
  static final Pattern PEAK =
      of(
          "\\bpeak(?:s|ed|ing)?\\b|\\bmaximum\\b|\\bhighest\\b|\\bas high as\\b|\\btop(?:s|ped) out\\b"
              + "|\\b(?:went|goes|climb(?:s|ed)?|rose|rises|jump(?:s|ed)|shot|got|reach(?:ed|es)?)"
              + "(?: up)? to\\b|\\bat (?:its|the) (?:best|most)\\b|\\bthe most (?:it|we|that|the)\\b");
  static final Pattern PEAK_WORD = of("\\bpeak|\\bmaximum\\b|\\bhighest\\b|\\bplateau of\\b");
  static final Pattern HELD_BEFORE = of("\\b(?:held|holds?|holding|plateau of|sustained)\\s*$");
  static final Pattern HELD_FOR =
      of(
          "\\b(?:held|holds?|holding|stay(?:s|ed)|remain(?:s|ed)|maintain(?:s|ed)|sustain(?:s|ed)"
              + "|kept)\\b[^.;]{0,60}\\bfor\\s*$");
  static final Pattern PLATEAU_LASTS =
      of(
          "\\b(?:plateau|hold|peak)\\b[^.;]{0,40}\\blast(?:s|ed)(?: for)?\\s*$"
              + "|\\b(?:hold|peak hold)(?: time)?\\s*(?::|was|took)\\s*$");
  static final Pattern HOLD = of("\\bh[eo]ld(?:s|ing)?\\b|\\bplateau\\b");
  static final Pattern HELD_UNTIL =
      of(
          "\\b(?:held|holds?|hold|plateau)\\b[^.;]{0,60}\\b(?:until|up to|as far as|ended at|to)\\s*$");
  static final Pattern HELD_FROM =
      of(
          "\\b(?:held|holds?|hold|plateau)\\b[^.;]{0,60}\\b(?:from|began at|starts? at|started at)\\s*$");
  static final Pattern PEAK_AFTER =
      of(
          "\\bpeak\\b[^.;]{0,30}\\b(?:came|comes|arriv\\w+|appear\\w+|reached|there)\\b[^.;]{0,12}"
              + "\\b(?:after|in)\\s*$|\\b(?:reach\\w*|hit) (?:its|the) peak[^.;]{0,20}\\b(?:after|in)\\s*$");
  static final Pattern AVERAGE = of("\\baverag(?:e|ed|es|ing)\\b|\\bmean\\b");
  static final Pattern OVER_SOC = of("\\bover (?:the )?(?:state of charge|soc)\\b");
  static final Pattern SOC_AVERAGE_PAST = of("averaged over (?:the )?(?:state of charge|soc)");
  static final Pattern STATION_BEHIND =
      Pattern.compile("^ (?:fast )?(?:charging )?(?:station|stall|charger|dispenser)\\b");
  static final Pattern STATION_RATED =
      of(
          "\\b(?:station|stall|charger|dispenser)\\b[^.;]{0,30}\\b(?:rated|gives?|delivers?|offers?)\\b");
  static final Pattern AT_MARK = of("(?:\\bat|\\bby|\\bpast|\\bonce at|\\baround|\\bfrom|^)\\s*$");
  static final Pattern CHANGED_AT_MARK =
      of(
          "\\b(?:still|down to|fell to|dropped to|power|took|takes|drew|draws|accept\\w*|left|only)\\b");

  static final Pattern DRIVE =
      of(
          "\\b(?:drove|drives?|driving|driven|laps?|walk\\w*|exit|queu\\w*|coffee|film(?:ed)? is|video"
              + "|away|further|speed|traffic|motorway (?:was|is)|break|wait(?:ed|ing) for)\\b");
  static final Pattern RANGE_DRIVEN =
      of(
          "\\b(?:on|by|of|from) (?:the|our|its) (?:real |really )?(?:range (?:that )?(?:we |it )?\\w* ?|driven range)(?:drove|driven|drive)?\\b");
  static final Pattern RATED = of("\\brated range\\b");
  static final Pattern BUYS =
      of(
          "\\b(?:bought|buys?|add(?:s|ed|ing)?|get|gets|got|gain(?:s|ed)?|g[ai]ves?|worth|costs?|takes?"
              + "|took|needs?|needed|for|in|back|put|within|after)\\b|:");
  static final Pattern SESSION =
      of(
          "\\b(?:session|charging session)\\b[^.;]{0,30}\\b(?:took|takes|lasted|was over)\\b|\\bsession(?: time)?\\s*:");
  static final Pattern STOP =
      of(
          "\\b(?:stop|charge|charging)\\b[^.;]{0,20}\\b(?:took|takes|lasted|was over)\\b|\\bin (?:all|total)\\b|\\baltogether\\b");
  static final Pattern PRECONDITIONING = of("\\bprecondition\\w*|\\bpreheat\\w*");
  static final Pattern NOT_A_WINDOW_TIME =
      of("\\b(?:lost|lose|queue\\w*|film is|faster|slower|quicker|longer|shorter)\\b");

  static final Pattern ADDED =
      of(
          "\\badd(?:ed|s|ing)?\\b|\\bput\\b[^.;]{0,20}\\binto?\\b|\\bwent in\\b|\\btook (?:on|in)\\b"
              + "|\\bcharged\\b|\\bcounter\\b|\\bflowed in\\b");
  static final Pattern USED = of("\\bused\\b|\\bdrew\\b|\\bconsumed\\b");
  static final Pattern USABLE = of("\\busable\\b");
  static final Pattern FULL = of("\\bfull (?:charge|battery)\\b");
  static final Pattern PLUGGED_IN_AT =
      of(
          "\\b(?:plugged (?:it |the car |her )?in|(?:start|began|begin|begun|began)(?:s|ed)?"
              + "(?: (?:the )?(?:session|charging|charge))?)(?: (?:at|with|from))?\\s*$");
  static final Pattern ARRIVED_AT =
      of(
          "\\b(?:arriv(?:ed|es|ing)|came|rolled|pulled|limped)(?: in| up)?(?: (?:there|at \\w+ \\w+))? (?:at|with)\\s*$");
  static final Pattern UNPLUGGED_AT =
      of(
          "\\b(?:unplugged(?: it| the car)?|(?:stopped|ended|finished|quit)(?: (?:the )?(?:charging"
              + "|session|charge))?|pulled (?:the|its) plug|session ended|charging (?:ended|stopped))"
              + " (?:at|with)\\s*$");
  static final Pattern START =
      of("\\b(?:plugg\\w+ (?:it )?in|start(?:ed)?|beg[ai]n\\w*|arriv\\w+|on arrival)\\b");
  static final Pattern BATTERY = of("\\b(?:battery|pack|cells)\\b");
  static final Pattern AIR = of("\\b(?:outside|ambient|air|weather|outdoors)\\b");
  static final Pattern ON_THE_DRIVE =
      of("\\b(?:drove|drive|driving|ring road|range test|test drive|laps?|loop)\\b");
  static final Pattern ODOMETER = of("\\bodometer\\b");
  static final Pattern RANGE = of("\\brange\\b|\\bfull to empty\\b");
  static final Pattern WHOLE_RANGE =
      of("\\b(?:full|real|driven|drove|whole|entire|true|actual)\\b|\\brange\\s*:");
  static final Pattern STEADY = of("\\b(?:steady|constant|cruis\\w+|target|held)\\b");
  static final Pattern OTHER_ROADS =
      of("\\b(?:town|city|urban|country|village|uphill|downhill|trip)\\b");

  /** What makes an amount a difference or a share and not a value. */
  static final Pattern DIFFERENCE_BEHIND =
      of(
          "^ (?:\\w+ )?(?:faster|quicker|slower|longer|shorter|more|less|fewer|higher|lower|later"
              + "|earlier|sooner|better|worse|warmer|colder|cooler|above|below|ahead|behind|apart"
              + "|lost|saved|off|gap|difference|short)\\b");

  static final Pattern DIFFERENCE_BEFORE =
      of(
          "\\b(?:by|lost|loses?|losing|gained|saved?|saves|another|further|extra|additional|fell|drops?"
              + "|dropped|rose|first|last|next|final|each|every|per|difference of|gap of)\\s*$");

  private Cues() {}

  private static Pattern of(String words) {
    return Pattern.compile("(?i)" + words);
  }
}
