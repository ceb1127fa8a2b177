package taperbook.endtoend;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import taperbook.result.ReportNumber;

/**
 * Id and label of a number with letters in place of requested values.
 *
 * @param id such as {@code time_to_soc_NN}
 * @param label such as {@code Time from plugging in to NN %}
 */
record NumberPattern(String id, String label) {
  private static final Pattern DISTANCE = Pattern.compile("_([0-9]+)_(km|mi)");
  private static final Pattern WINDOW = Pattern.compile("_([0-9]+)_([0-9]+)$");
  private static final Pattern COUNTED =
      Pattern.compile("^(lead|taper_segment|taper_step|crossing)_([0-9]+)");
  private static final Pattern NUMERAL = Pattern.compile("_([0-9]+)(?=_|$)");
  private static final Pattern SESSION = Pattern.compile("(Northmoor|Veldt)[^:]*? 20[0-9]{2}");
  private static final String CHANGE = "full_energy_change_";

  static NumberPattern of(ReportNumber number) {
    String label = SESSION.matcher(number.label()).replaceAll("SESSION");
    String id = number.id();
    if (id.startsWith(CHANGE)) {
      return new NumberPattern(
          CHANGE + "SESSION", label.replaceAll(" (since|against) .*", " $1 SESSION"));
    }
    Matcher counted = COUNTED.matcher(id);
    if (counted.find()) {
      return new NumberPattern(
          counted.replaceFirst("$1_K"),
          label
              .replaceFirst(" [0-9]+, .*:", " K:")
              .replaceFirst("(Crossing|after segment) [0-9]+", "$1 K"));
    }
    Matcher distance = DISTANCE.matcher(id);
    if (distance.find()) {
      label = label.replace(distance.group(1) + " " + distance.group(2), "DISTANCE");
      label = label.replace(distance.group(1) + "\u00a0" + distance.group(2), "DISTANCE");
      id = distance.replaceFirst("_DISTANCE");
    }
    Matcher window = WINDOW.matcher(id);
    if (window.find()) {
      label = numeral(numeral(label, window.group(1), "AA"), window.group(2), "BB");
      id = window.replaceFirst("_AA_BB");
    }
    Matcher numeral = NUMERAL.matcher(id);
    while (numeral.find()) {
      label = numeral(label, numeral.group(1), "NN");
    }
    return new NumberPattern(numeral.replaceAll("_NN"), label);
  }

  private static String numeral(String label, String digits, String letters) {
    return label.replaceFirst("\\b" + digits + "\\b", letters);
  }
}
