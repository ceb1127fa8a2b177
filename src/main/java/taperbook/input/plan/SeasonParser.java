package taperbook.input.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.i18n.Texts;
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
    String remedy = Texts.of("input.season_parser.name_pair_or_take_line");
    for (List<FrontMatterValue> pair : frontMatter.groupsIfPresent(ReportKey.SEASON, remedy)) {
      List<FrontMatterValue> known =
          pair.stream().filter(name -> either.find(name).isPresent()).toList();
      known.stream()
          .filter(name -> !taken.add(name.text()))
          .forEach(
              name ->
                  refuse(
                      name,
                      Texts.of("input.season_parser.named_twice"),
                      Texts.of("input.season_parser.each_run_in_one_pair"),
                      Texts.of("input.common.take_one_of_two_away")));
      if (pair.size() != 2) {
        refuse(
            pair.get(0),
            Texts.of("input.season_parser.pair_of", pair.size()),
            Texts.of("input.season_parser.two_names_in_each_pair"),
            Texts.of("input.season_parser.write_warm_run_comma_and"));
      } else if (known.stream().allMatch(sessions::has)) {
        known.forEach(name -> ofSessions.add(name.text()));
      } else if (known.stream().allMatch(rangeTests::has)) {
        known.forEach(name -> ofDrives.add(name.text()));
      } else {
        refuse(
            pair.get(1),
            Texts.of("input.season_parser.paired_with", Quoted.of(pair.get(0).text())),
            Texts.of("input.season_parser.two_sessions_or_two_range"),
            Texts.of("input.season_parser.pair_session_with_session_and"));
      }
    }
    return new Season<>(ofSessions, ofDrives);
  }

  private void refuse(FrontMatterValue written, String why, String expected, String remedy) {
    written.report(
        log,
        ProblemCode.FACTS_CONTRADICT,
        Quoted.of(written.text()) + ", " + why,
        expected,
        remedy);
  }
}
