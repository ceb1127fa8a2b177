package taperbook.measure.caveat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import taperbook.measure.recording.Recording;
import taperbook.model.Caveat;
import taperbook.model.Channel;
import taperbook.model.Review;
import taperbook.model.Review.AsRead;
import taperbook.model.Review.Misread;
import taperbook.words.MisreadWords;
import taperbook.words.Wording;

/** Readings that do not fit the others, were left out, or were looked at again. */
final class ReadingCaveats {
  private ReadingCaveats() {}

  static List<Caveat> of(Recording recording) {
    Review review = recording.session().review();
    List<String> sentences = new ArrayList<>();
    for (Misread misread : review.misreads()) {
      sentences.add(misfit(misread, recording.wording()));
    }
    rows(review, true).forEach(r -> sentences.add("Looked at again and confirmed: " + r + "."));
    rows(review, false).forEach(r -> sentences.add("Left out as doubtful: " + r + "."));
    return sentences.stream().map(s -> new Caveat(Caveat.Kind.DOUBTFUL_READING, s)).toList();
  }

  private static String misfit(Misread misread, Wording wording) {
    String reading = MisreadWords.reading(misread, wording);
    return Character.toUpperCase(reading.charAt(0))
        + reading.substring(1)
        + " does not fit the other readings: "
        + MisreadWords.fitting(misread, wording)
        + " would. It was kept as it was read.";
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
