package taperbook.write.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import taperbook.model.Correction;
import taperbook.model.Estimate;
import taperbook.model.MovedNumber;
import taperbook.words.Wording;

/** What was put right since a report was published, the latest first. */
final class CorrectionsPart {
  private final String mainSession;
  private final Wording wording;

  CorrectionsPart(String mainSession, Wording wording) {
    this.mainSession = mainSession;
    this.wording = wording;
  }

  /** One entry for each correction: {@code date}, {@code reason}, {@code sum}, {@code moved}. */
  List<Map<String, Object>> of(List<Correction> corrections) {
    List<Map<String, Object>> entries = new ArrayList<>();
    corrections.forEach(c -> entries.add(0, entry(c)));
    return entries;
  }

  private Map<String, Object> entry(Correction correction) {
    List<MovedNumber> beyond = correction.moved().stream().filter(MovedNumber::beyond).toList();
    return Map.of(
        "date",
        Wording.date(correction.day()),
        "reason",
        correction.reason(),
        "sum",
        sum(correction, beyond.size()),
        "moved",
        beyond.stream().map(this::moved).toList(),
        "within",
        correction.moved().stream()
            .filter(m -> !m.beyond())
            .map(this::label)
            .collect(Collectors.joining("; ")));
  }

  private static String sum(Correction correction, int beyond) {
    int all = correction.moved().size();
    String since = "Since the version of " + Wording.date(correction.since()) + " ";
    if (all == 0) {
      return since + "no number moved.";
    }
    return since
        + (all == 1 ? "1 number" : all + " numbers")
        + " moved, "
        + (beyond == 0 ? "none" : String.valueOf(beyond))
        + " of them beyond the interval that was printed.";
  }

  private Map<String, Object> moved(MovedNumber number) {
    return Map.of(
        "label",
        label(number),
        "before",
        words(number, number.before()),
        "after",
        words(number, number.after()),
        "causes",
        number.causes());
  }

  private String label(MovedNumber number) {
    String of = number.session().equals(mainSession) ? "" : " (" + number.session() + ")";
    return number.label()
        + (number.against().isEmpty() ? of : " (against " + number.against() + ")");
  }

  private String words(MovedNumber number, Optional<Estimate> estimate) {
    return estimate
        .map(e -> wording.value(e, number.unit()) + ", " + wording.range(e.bounds(), number.unit()))
        .orElse("withheld");
  }
}
