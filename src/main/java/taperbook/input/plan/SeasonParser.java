package taperbook.input.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.input.folder.FrontMatterValue;
import taperbook.plan.ReportPlan.Season;

/** Parses the pairs of a warm and a cold run of the reported car. */
final class SeasonParser {
  private final FrontMatter frontMatter;
  private final ProblemLog log;

  SeasonParser(FrontMatter frontMatter, ProblemLog log) {
    this.frontMatter = frontMatter;
    this.log = log;
  }

  /**
   * Returns the names, alternately warm and cold.
   *
   * @param either names of sessions and of range tests
   */
  Season<String, String> read(KnownNames sessions, KnownNames rangeTests, KnownNames either) {
    List<String> ofSessions = new ArrayList<>();
    List<String> ofDrives = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    String remedy = "name a pair, or take the line away";
    for (List<FrontMatterValue> pair : frontMatter.groupsIfPresent(ReportKey.SEASON, remedy)) {
      List<FrontMatterValue> known =
          pair.stream().filter(name -> either.find(name).isPresent()).toList();
      known.stream()
          .filter(name -> !taken.add(name.text()))
          .forEach(
              name ->
                  refuse(name, "named twice", "each run in one pair", "take one of the two away"));
      if (pair.size() != 2) {
        refuse(
            pair.get(0),
            "a pair of " + pair.size(),
            "two names in each pair, the warm run first",
            "write the warm run, a comma, and the cold run");
      } else if (known.stream().allMatch(sessions::has)) {
        known.forEach(name -> ofSessions.add(name.text()));
      } else if (known.stream().allMatch(rangeTests::has)) {
        known.forEach(name -> ofDrives.add(name.text()));
      } else {
        refuse(
            pair.get(1),
            "paired with " + Quoted.of(pair.get(0).text()),
            "two sessions or two range tests in a pair",
            "pair a session with a session and a range test with a range test");
      }
    }
    return new Season<>(ofSessions, ofDrives);
  }

  private void refuse(FrontMatterValue written, String why, String expected, String remedy) {
    log.add(
        ProblemCode.FACTS_CONTRADICT,
        written.line(),
        written.column(),
        Quoted.of(written.text()) + ", " + why,
        expected,
        remedy);
  }
}
