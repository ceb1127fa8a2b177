package taperbook.metric.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import taperbook.metric.recording.Recording;
import taperbook.session.Caveat;
import taperbook.session.Channel;
import taperbook.session.Review;
import taperbook.session.Review.AsRead;

/** Caveats of readings that were left out as doubtful, or checked and confirmed. */
final class ReadingCaveats {
  private ReadingCaveats() {}

  static List<Caveat> of(Recording recording) {
    Review review = recording.session().review();
    List<String> sentences = new ArrayList<>();
    rows(review, true).forEach(r -> sentences.add("Looked at again and confirmed: " + r + "."));
    rows(review, false).forEach(r -> sentences.add("Left out as doubtful: " + r + "."));
    return sentences.stream().map(s -> new Caveat(Caveat.Kind.DOUBTFUL_READING, s)).toList();
  }

  private static List<String> rows(Review review, boolean confirmed) {
    return review.asRead().stream()
        .filter(a -> a.isConfirmed() == confirmed)
        .map(ReadingCaveats::words)
        .toList();
  }

  private static String words(AsRead looked) {
    return looked.channels().stream().map(Channel::columnName).collect(Collectors.joining(" and "))
        + " in "
        + looked.row();
  }
}
