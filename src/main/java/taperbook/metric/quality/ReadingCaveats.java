package taperbook.metric.quality;

import java.util.ArrayList;
import java.util.List;
import taperbook.i18n.Joined;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;
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
    List<Message> sentences = new ArrayList<>();
    rows(review, true)
        .forEach(
            r ->
                sentences.add(
                    Message.of("metric.reading_caveats.looked_at_again_and_confirmed", r)));
    rows(review, false)
        .forEach(r -> sentences.add(Message.of("metric.reading_caveats.left_out_as_doubtful", r)));
    return sentences.stream().map(s -> new Caveat(Caveat.Kind.DOUBTFUL_READING, s)).toList();
  }

  private static List<String> rows(Review review, boolean confirmed) {
    return review.asRead().stream()
        .filter(a -> a.isConfirmed() == confirmed)
        .map(ReadingCaveats::words)
        .toList();
  }

  private static String words(AsRead looked) {
    return Texts.of(
        "metric.reading_caveats.in",
        Joined.and(looked.channels().stream().map(Channel::columnName).toList()),
        looked.row());
  }
}
