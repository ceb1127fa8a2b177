package taperbook.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import taperbook.i18n.Texts;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.quantity.WantedDistance;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.Role;
import taperbook.result.SessionResult;
import taperbook.session.Session;

/** Formats the answer of a report as one or two sentences of spoken language. */
public final class AnswerText {
  private static final int MAX_DISTANCES = 2;

  private final ReportResult result;
  private final NumberFormatter wording;

  public AnswerText(ReportResult result) {
    this.result = result;
    this.wording = new NumberFormatter(result.plan().style());
  }

  /**
   * Returns the distance for stops of some minutes, the peak power and its duration, and which of
   * two sessions was quicker; empty if none of these was measured.
   */
  public String text() {
    List<String> parts = new ArrayList<>();
    String added = String.join(", ", added());
    (added.isEmpty() ? window() : Optional.of(added)).ifPresent(parts::add);
    peak().ifPresent(parts::add);
    List<String> sentences = new ArrayList<>();
    if (!parts.isEmpty()) {
      sentences.add(String.join("; ", parts) + ".");
    }
    quicker().ifPresent(sentences::add);
    return String.join(" ", sentences);
  }

  /** Returns the shortest and the longest distance that was reached. */
  private List<String> added() {
    List<WantedDistance> distances = result.plan().wishes().distances();
    List<String> all = new ArrayList<>();
    for (WantedDistance distance : distances) {
      result
          .main()
          .numbers()
          .measured(result.plan().timeToAddId(distance))
          .ifPresent(
              n ->
                  all.add(
                      Texts.of(
                          "answer.bought",
                          distance.words().replace(' ', '\u00a0'),
                          wording.about(n))));
    }
    return all.size() > MAX_DISTANCES ? List.of(all.get(0), all.get(all.size() - 1)) : all;
  }

  private Optional<String> window() {
    return result.main().numbers().with(Role.HEADLINE).stream()
        .filter(n -> n.id().startsWith("time_soc_") && n.estimate().isPresent())
        .findFirst()
        .map(n -> Texts.of("answer.window", n.label(), wording.about(n)));
  }

  private Optional<String> peak() {
    Optional<ReportNumber> power = result.main().numbers().measured("peak_power");
    Optional<ReportNumber> hold =
        result
            .main()
            .numbers()
            .measured("peak_hold_time")
            .filter(n -> n.estimate().orElseThrow().value() > 0);
    return power.map(
        p ->
            hold.map(h -> Texts.of("answer.held", wording.about(p), wording.about(h)))
                .orElseGet(() -> Texts.of("answer.peak", wording.about(p))));
  }

  /** Only for a single compared session, and only if the difference is certain. */
  private Optional<String> quicker() {
    if (result.pairs().size() != 1) {
      return Optional.empty();
    }
    Optional<ReportNumber> difference =
        result.pairs().get(0).numbers().with(Role.HEADLINE).stream().findFirst();
    Optional<Estimate> seconds = difference.flatMap(ReportNumber::estimate);
    Optional<SocWindow> shared = result.common().shared();
    if (shared.isEmpty() || seconds.isEmpty() || seconds.get().bounds().contains(0)) {
      return Optional.empty();
    }
    List<Session> sessions = result.sessions().stream().map(SessionResult::session).toList();
    String other = SessionNames.of(sessions).inSentence(1);
    boolean ahead = seconds.get().value() < 0;
    return Optional.of(
        Texts.of(
            ahead ? "answer.quicker" : "answer.slower",
            shared.get().from() + "\u00a0%",
            shared.get().to() + "\u00a0%",
            wording.about(difference.get()).replace("\u2212", ""),
            other));
  }
}
