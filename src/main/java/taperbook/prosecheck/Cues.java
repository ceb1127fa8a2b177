package taperbook.prosecheck;

import java.util.regex.Pattern;

/**
 * Words in a tester's prose that identify the number a figure refers to: common usage, no source.
 */
final class Cues {
  static final Pattern PEAK =
      of(
          "\\bpeak(?:s|ed|ing)?\\b|\\bmaximum\\b|\\bmax\\b|\\bhighest\\b|\\bas high as\\b"
              + "|\\b(?:tops?|topped|maxe[sd]) out\\b|\\bat (?:its|the) (?:best|most)\\b|\\bat best\\b"
              + "|\\bthe most (?:it|we|that|the)\\b|\\bcrest(?:s|ed)\\b");
  static final Pattern ROSE_TO =
      of(
          "\\b(?:went|goes|climb(?:s|ed)?|rose|rises|jump(?:s|ed)|shot|ran|got|reach(?:ed|es)?)"
              + "(?: all the way)?(?: up)?(?: to)?\\s*$");
  static final Pattern FALLING =
      of(
          "\\b(?:fell|falls?|falling|dropp?\\w*|down to|sank|slid|slips?|declin\\w*|taper\\w*)\\b"
              + "[^.;]{0,40}$");
  static final Pattern NOT_THE_PEAK =
      of(
          "\\b(?:limit\\w*|capped|speed|fan|noise|when|first|initially|soon|minute|before it hit"
              + "|until it|average\\w*|mean)\\b");
  static final Pattern AT_A_STATION = of("\\b(?:stations?|stalls?|chargers?|dispensers?|cable)\\b");
  static final Pattern METERED =
      of(
          "\\b(?:stations?|stall|charger|bill\\w*|pa(?:id|y|ying)|meter\\w*|receipt|invoice|grid)\\b");
  static final Pattern IN_PART =
      of(
          "\\b(?:by then|so far|at that point|already|until then|half|first|stops|sessions|days|before)\\b");
  static final Pattern ABOUT_CHARGING = of("\\b(?:plug\\w*|unplug\\w*|session|charg\\w+|cable)\\b");
  static final Pattern ABOUT_THE_CURVE =
      of("\\b(?:taper\\w*|hold|plateau|peak|climb|ramp|fall|power|for a moment|paus\\w*)\\b");
  static final Pattern LEG =
      of(
          "\\b(?:laps?|legs?|half|uphill|downhill|outward|outbound|return|way (?:back|out|home)|climb"
              + "|trip|journey|stretch|detour|heat pump|heating)\\b");
  static final Pattern DISPLAYED =
      of("\\b(?:display\\w*|showed|shown|shows|indicat\\w*|reckon\\w*)\\b");
  static final Pattern RANGE_LEFT = of("\\b(?:left|remaining|rest|reserve|guess\\w*)\\b");
  static final Pattern HEATING =
      of("\\b(?:precondition\\w*|preheat\\w*|warm(?:ing|ed)|heat(?:ing|ed)|gained)\\b");
  static final Pattern CABIN =
      of(
          "\\b(?:conditioning|conditioner|climate|cabin|inside|interior|set to|heater|thermostat)\\b");
  static final Pattern OTHER_HOUR =
      of(
          "\\b(?:afternoon|evening|noon|night|later|by the time|midday|sunset|dawn|when we left)\\b");
  static final Pattern PEOPLE_STAY =
      of("\\b(?:we|I|us|one|you)\\b[^.;]{0,12}\\b(?:stay|remain|kept|held)");
  static final Pattern CLOCK_BEFORE = of("\\b(?:at|from|until|till|by|since|before|between)\\s*$");
  static final Pattern PASTIME =
      of(
          "\\b(?:lunch|coffee|breakfast|dinner|meal|nap|pause|break|queu\\w*|waited|price\\w*|allowed|spare)\\b");
  static final Pattern FROM_MARK =
      of("\\b(?:from|above|past|beyond|below|under|over|between|towards)\\s*$");
  static final Pattern NEXT_TO_ROAD = of("\\b(?:motorway|road|drove|drive|driving)\\b");
  static final Pattern DISTANCE_IS_DRIVEN =
      of(
          "\\b(?:after|every|each|before|within|over|past|of|with|at|trip|journey|leg|stretch)(?: the)?\\s*$");
  static final Pattern DRIVEN_BEHIND =
      of(
          "^ (?:later|away|before|from|to go|stretch|drive|trip|journey|leg|route|at \\d|commute|further|ago)\\b");
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
          "\\b(?:held|holds?|hold|plateau|peak last\\w*)\\b[^.;]{0,60}\\b(?:until|up to|as far as|ended at|to)\\s*$");
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
      of("\\b(?:station|stall|charger|dispenser)\\b[^.;]{0,30}\\brated\\b");
  static final Pattern AT_MARK = of("(?:\\bat|\\bby|\\bonce at|\\baround|^)\\s*$");
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
          "\\b(?:bought|buys?|add(?:s|ed|ing)?|gets?|got|gain(?:s|ed)?|g[ai]ves?|worth|costs?|takes?"
              + "|took|needs?|needed|for|in|back|put|within|charged?|restor\\w+|recover\\w*)\\b|:");
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
      of(
          "\\b(?:real|driven|true|actual|whole|entire|full|motorway)(?: \\w+)? range\\b|\\brange\\s*:"
              + "|\\brange (?:that )?we (?:really )?drove\\b|\\bfull battery\\b|\\bfull to empty\\b");
  static final Pattern OTHER_ROADS =
      of("\\b(?:town|city|urban|country|village|uphill|downhill|trip)\\b");

  /** Words after an amount that make it a difference or a share rather than a value. */
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
