package taperbook.output.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import taperbook.format.DifferenceFormat;
import taperbook.format.NumberFormatter;
import taperbook.format.PairText;
import taperbook.format.RunText;
import taperbook.format.SessionNames;
import taperbook.i18n.Joined;
import taperbook.i18n.Texts;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.quantity.Unit;
import taperbook.quantity.WantedDistance;
import taperbook.result.CommonGround;
import taperbook.result.Metric;
import taperbook.result.PairResult;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.Runs;
import taperbook.result.SessionResult;

/** Comparison of sessions: curve by curve, on common ground, and as recorded. */
final class ComparisonPart {
  private final ReportResult result;
  private final List<SessionResult> sessions;
  private final NumberViews views;
  private final NumberFormatter formatter;
  private final NumberTable table;
  private final SessionNames names;

  ComparisonPart(ReportResult result, NumberViews views, NumberFormatter formatter) {
    this.result = result;
    this.sessions = result.sessions();
    this.views = views;
    this.formatter = formatter;
    this.table = new NumberTable(views, formatter);
    this.names = SessionNames.of(sessions.stream().map(SessionResult::session).toList());
  }

  Map<String, Object> map() {
    boolean present = !result.compared().isEmpty();
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("present", present);
    ConditionDifferences apart = new ConditionDifferences(sessions, formatter);
    map.put("sessions", present ? heads() : List.of());
    map.put("pairs", result.pairs().stream().map(this::pair).toList());
    map.put("common", present ? common() : Map.of("rows", List.of()));
    map.put("ground", present ? ground() : List.of());
    map.put("recorded", present ? recorded() : Map.of("rows", List.of()));
    map.put("alike", sameStart());
    map.put("runs", present ? RunText.ofComparison(result.runs().spread()) : "");
    boolean single = result.runs().spread().known() == Runs.Known.NOT_MEASURED;
    map.put(
        "mark",
        single ? Texts.of("page.comparison_part.best_run") : Texts.of("page.comparison_part.best"));
    map.put("inShort", present ? RunText.inShort(result.runs().spread()) : "");
    map.put("unmarked", present ? new ComparisonCaution(result).sentences() : List.of());
    map.put("notKnown", Texts.of("page.common.not_known"));
    map.put("conditions", present ? apart.conditions() : List.of());
    map.put("caveats", present ? apart.caveats() : List.of());
    return map;
  }

  private List<Map<String, Object>> heads() {
    List<Map<String, Object>> heads = new ArrayList<>();
    for (int i = 0; i < sessions.size(); i++) {
      SessionResult session = sessions.get(i);
      heads.add(
          Map.of(
              "letter",
              SessionNames.letter(i),
              "words",
              names.words(i),
              "name",
              session.session().name(),
              "subject",
              FactTexts.subject(session.session()),
              "start",
              views.view(session, "start_soc"),
              "end",
              views.view(session, "end_soc")));
    }
    return heads;
  }

  private Map<String, Object> pair(PairResult pair) {
    String other = names.letterOf(pair.other());
    String one = SessionNames.letter(0);
    return Map.of(
        "one",
        one,
        "other",
        other,
        "sentences",
        sentences(pair, one, other),
        "numbers",
        pair.numbers().all().stream().map(views::view).toList());
  }

  /** Describes the findings and which of the two was interrupted. */
  private List<String> sentences(PairResult pair, String one, String other) {
    List<String> sentences = new ArrayList<>(new PairText(pair, one, other, formatter).sentences());
    pair.shared().ifPresent(s -> sentences.add(RunText.inShort(result.runs().spread())));
    for (int i = 0; i < sessions.size(); i++) {
      String letter = SessionNames.letter(i);
      Optional<ReportNumber> interruption = sessions.get(i).numbers().find("interruption_time");
      if (letter.equals(one) || letter.equals(other)) {
        interruption.ifPresent(
            n ->
                sentences.add(
                    Texts.of(
                        "page.comparison_part.times_here_include_for_which",
                        formatter.value(n),
                        letter)));
      }
    }
    return sentences;
  }

  /** Returns the numbers on common ground that at least one session has. */
  private Map<String, Object> common() {
    return table(result.common().ids(result.plan().wishes()), true);
  }

  private Map<String, Object> recorded() {
    Set<String> ids = new LinkedHashSet<>();
    result.main().numbers().headline().forEach(n -> ids.add(n.id()));
    ids.removeAll(result.common().ids(result.plan().wishes()));
    ids.addAll(List.of("peak_c_rate", "energy_added", "session_time"));
    return table(ids, false);
  }

  /**
   * Returns a table. A number that includes an interruption gets a second row without it, and the
   * first then has no best.
   *
   * @param common true for numbers on common ground, which have marks and differences
   */
  private Map<String, Object> table(Set<String> ids, boolean common) {
    boolean likeForLike = common || sameStart();
    List<Map<String, Object>> rows = new ArrayList<>();
    for (String id : ids) {
      String without = Metric.withoutInterruptions(id);
      List<Optional<ReportNumber>> as = sessions.stream().map(s -> s.numbers().find(id)).toList();
      List<Optional<ReportNumber>> steady =
          sessions.stream()
              .map(s -> s.numbers().find(without).or(() -> s.numbers().find(id)))
              .toList();
      Optional<ReportNumber> interrupted =
          steady.stream().flatMap(Optional::stream).filter(n -> n.id().equals(without)).findFirst();
      as.stream()
          .flatMap(Optional::stream)
          .filter(n -> interrupted.isEmpty() || n.origin().session().equals(session(interrupted)))
          .findFirst()
          .ifPresent(n -> rows.add(row(n, as, likeForLike && interrupted.isEmpty())));
      interrupted.ifPresent(n -> rows.add(row(n, steady, likeForLike)));
    }
    boolean pair = common && result.pairs().size() == 1;
    return Map.of("rows", rows, "differences", pair);
  }

  private static String session(Optional<ReportNumber> number) {
    return number.map(n -> n.origin().session()).orElse("");
  }

  /** Returns a row with the label of one of its numbers. */
  private Map<String, Object> row(
      ReportNumber named, List<Optional<ReportNumber>> numbers, boolean likeForLike) {
    boolean fair = likeForLike && new ComparisonCaution(result).mayMark(numbers);
    OptionalInt best = fair ? Best.of(numbers, result.runs().spread()) : OptionalInt.empty();
    Map<String, Object> row = table.row(new NumberTable.Row(named.label(), numbers));
    row.put("best", best.orElse(-1));
    row.put(
        "complete", numbers.stream().allMatch(n -> n.flatMap(ReportNumber::estimate).isPresent()));
    row.put("difference", difference(named.id()));
    return row;
  }

  /** Returns which of two sessions is ahead, and by how much; empty for more than two. */
  private Map<String, Object> difference(String id) {
    Optional<ReportNumber> difference =
        result.pairs().size() == 1
            ? result.pairs().get(0).numbers().find(PairResult.differenceId(id))
            : Optional.empty();
    return difference
        .filter(d -> d.estimate().isPresent())
        .map(
            d -> new DifferenceFormat(d, SessionNames.letter(0), SessionNames.letter(1), formatter))
        .map(
            text ->
                Map.<String, Object>of("present", true, "shown", text.words(), "ends", text.ends()))
        .orElse(Map.of("present", false));
  }

  /** Describes how the common ground was determined and its effect on the headline number. */
  private List<String> ground() {
    List<String> sentences = new ArrayList<>();
    CommonGround ground = result.common();
    if (ground.shared().isEmpty()) {
      sentences.add(Texts.of("page.comparison_part.no_window_of_state_of"));
      return sentences;
    }
    SocWindow shared = ground.shared().get();
    sentences.add(
        Texts.of("page.comparison_part.all_sessions_went_through_unequal", edges(shared)));
    ground
        .warmed()
        .ifPresent(
            w -> sentences.add(Texts.of("page.comparison_part.from_on_all_of_them", w.from())));
    ground.frozen().ifPresent(f -> sentences.add(frozen(ground, f)));
    for (int i = 0; i < sessions.size(); i++) {
      effect(i, shared.from()).ifPresent(sentences::add);
    }
    return sentences;
  }

  /** Describes windows kept from publication, and what they would otherwise be. */
  private static String frozen(CommonGround ground, CommonGround.Frozen frozen) {
    String sentence =
        Texts.of(
            "page.comparison_part.these_windows_are_those_of",
            NumberFormatter.date(frozen.since()));
    return frozen.current().equals(ground.windows())
        ? sentence + "."
        : Texts.of(
            "page.comparison_part.found_anew_they_would_be",
            sentence,
            Joined.and(frozen.current().stream().map(ComparisonPart::edges).toList()));
  }

  /** Describes the effect of the cut on a session's time for the first distance. */
  private Optional<String> effect(int index, int from) {
    List<WantedDistance> distances = result.plan().wishes().distances();
    SessionResult session = sessions.get(index);
    Optional<Estimate> start = session.numbers().estimate("start_soc");
    if (distances.isEmpty() || start.isEmpty() || start.get().value() >= from) {
      return Optional.empty();
    }
    ReportPlan plan = result.plan();
    Optional<ReportNumber> plugged = session.numbers().find(plan.timeToAddId(distances.get(0)));
    Optional<ReportNumber> cut =
        session.numbers().find(CommonGround.timeToAddId(distances.get(0), from));
    if (plugged.flatMap(ReportNumber::estimate).isEmpty()
        || cut.flatMap(ReportNumber::estimate).isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        Texts.of(
            "page.comparison_part.took_from_plugging_in_at",
            distances.get(0).words().replace(' ', '\u00a0'),
            SessionNames.letter(index),
            formatter.value(plugged.get()),
            formatter.value(start.get(), Unit.PERCENT),
            formatter.value(cut.get()),
            from));
  }

  private static String edges(SocWindow window) {
    return Texts.of("page.common.to", window.from(), window.to());
  }

  /** Returns true if all sessions may have started at the same state of charge. */
  private boolean sameStart() {
    List<Optional<Estimate>> starts =
        sessions.stream().map(s -> s.numbers().estimate("start_soc")).toList();
    return starts.stream().allMatch(Optional::isPresent)
        && starts.stream()
            .flatMap(Optional::stream)
            .allMatch(s -> s.bounds().overlaps(starts.get(0).orElseThrow().bounds()));
  }
}
