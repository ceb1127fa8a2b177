package taperbook.workspace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import taperbook.i18n.Texts;

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
      calls.put("session " + SESSION, Texts.of("project.first_steps.readings_of_charging_session"));
    }
    if (drives.isEmpty()) {
      calls.put(
          "range-test " + RANGE_TEST,
          Texts.of("project.first_steps.drive_that_minutes_per_distance"));
    }
    calls.put(
        Texts.of("project.first_steps.report_first_report")
            + first(sessions, SESSION)
            + " "
            + first(drives, RANGE_TEST),
        Texts.of("project.first_steps.text_of_report"));
    List<String> lines = new ArrayList<>();
    lines.add(Texts.of("project.first_steps.there_is_no_report_yet"));
    lines.addAll(aligned(calls));
    lines.add(Texts.of("project.first_steps.fill_in_what_they_begin"));
    if (!project.isStarted()) {
      lines.add(Texts.of("project.first_steps.if_there_are_files_already"));
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
