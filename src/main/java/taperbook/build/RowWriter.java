package taperbook.build;

import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import taperbook.i18n.Message;
import taperbook.quantity.Estimate;
import taperbook.result.Contribution;
import taperbook.result.Curve;
import taperbook.result.LibraryRow;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.session.Caveat;
import taperbook.session.RowRun;

/** Writes rows so that {@link RowParser} restores every digit of every number. */
final class RowWriter {
  private final DataOutputStream out;
  private final Map<String, Integer> numbers = new HashMap<>();

  RowWriter(DataOutputStream out) {
    this.out = out;
  }

  /** Writes the index of a text, followed by its bytes on first occurrence: most texts repeat. */
  void text(String text) throws IOException {
    Integer before = numbers.putIfAbsent(text, numbers.size());
    out.writeInt(before == null ? numbers.size() - 1 : before);
    if (before != null) {
      return;
    }
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    out.writeInt(bytes.length);
    out.write(bytes);
  }

  void row(LibraryRow row) throws IOException {
    text(row.session());
    text(row.about().vehicle());
    list(row.about().date().stream().toList(), this::text);
    list(row.about().place().stream().toList(), this::text);
    list(row.about().preconditioned().stream().toList(), this::text);
    text(row.about().conditions());
    list(row.numbers().all(), this::number);
    curve(row.curve());
    names(row.caveats());
  }

  /** Writes one of the values. */
  private interface Part<T> {
    void write(T value) throws IOException;
  }

  private <T> void list(Collection<T> values, Part<T> part) throws IOException {
    out.writeInt(values.size());
    for (T value : values) {
      part.write(value);
    }
  }

  private <E extends Enum<E>> void names(Set<E> values) throws IOException {
    list(new TreeSet<>(values), value -> text(value.name()));
  }

  private void number(ReportNumber number) throws IOException {
    text(number.id());
    text(number.label());
    text(number.unit().name());
    text(number.method().name());
    text(number.metric().basis().name());
    names(number.metric().inputs());
    names(number.metric().roles());
    out.writeBoolean(number.outcome() instanceof Outcome.Measured);
    if (number.outcome() instanceof Outcome.Measured measured) {
      measured(measured);
    } else {
      message(number.reason().orElseThrow());
    }
    text(number.origin().session());
    text(number.origin().against());
    list(RowRun.of(number.origin().rows()), this::run);
    list(number.caveats(), this::caveat);
  }

  private void measured(Outcome.Measured measured) throws IOException {
    Estimate estimate = measured.estimate();
    out.writeDouble(estimate.value());
    out.writeDouble(estimate.bounds().low());
    out.writeDouble(estimate.bounds().high());
    out.writeDouble(measured.coverage());
    list(measured.budget(), this::contribution);
  }

  private void contribution(Contribution part) throws IOException {
    text(part.source().name());
    out.writeDouble(part.standardUncertainty());
    out.writeDouble(part.share());
  }

  private void caveat(Caveat caveat) throws IOException {
    text(caveat.kind().name());
    message(caveat.fact());
    list(caveat.meaning().stream().toList(), this::message);
  }

  private void message(Message message) throws IOException {
    text(message.key());
    list(message.arguments(), this::text);
  }

  private void run(RowRun run) throws IOException {
    text(run.file());
    out.writeInt(run.firstLine());
    out.writeInt(run.lastLine());
  }

  private void curve(Curve curve) throws IOException {
    out.writeInt(curve.size());
    for (int i = 0; i < curve.size(); i++) {
      out.writeDouble(curve.x(i));
      out.writeDouble(curve.y(i));
      out.writeDouble(curve.low(i));
      out.writeDouble(curve.high(i));
      out.writeBoolean(curve.wideGapAfter(i));
    }
  }
}
