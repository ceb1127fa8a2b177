package taperbook.workspace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Suggests next steps in a folder without reports, as commands that can be copied. */
public final class FirstSteps {
  private static final String SESSION = "first-stop";
  private static final String RANGE_TEST = "first-drive";

  private FirstSteps() {}

  /** Returns the lines for the folder, or none if it has a report. */
  public static List<String> of(Project project) {
    if (!project.reportNames().isEmpty()) {
      return List.of();
    }
    List<String> sessions = project.sessionNames();
    List<String> drives = project.rangeTestNames();
    Map<String, String> calls = new LinkedHashMap<>();
    if (sessions.isEmpty()) {
      calls.put("session " + SESSION, "the readings of a charging session");
    }
    if (drives.isEmpty()) {
      calls.put("range-test " + RANGE_TEST, "the drive that minutes per distance rest on");
    }
    calls.put(
        "report first-report " + first(sessions, SESSION) + " " + first(drives, RANGE_TEST),
        "the text of the report");
    List<String> lines = new ArrayList<>();
    lines.add("There is no report yet. To begin one:");
    lines.addAll(aligned(calls));
    lines.add(
        "Fill in what they begin; taperbook check says what is missing, and report makes it.");
    if (!project.isStarted()) {
      lines.add(
          "If there are files already, run it in their folder, or name that with --folder DIR.");
    }
    return lines;
  }

  private static List<String> aligned(Map<String, String> calls) {
    int widest = calls.keySet().stream().mapToInt(String::length).max().orElse(0);
    List<String> lines = new ArrayList<>();
    calls.forEach(
        (call, meaning) ->
            lines.add(
                "  taperbook blank " + call + " ".repeat(widest - call.length()) + "  " + meaning));
    return lines;
  }

  private static String first(List<String> names, String otherwise) {
    return names.isEmpty() ? otherwise : names.get(0);
  }
}
