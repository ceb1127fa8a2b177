package taperbook.build;

import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import taperbook.quantity.Estimate;
import taperbook.result.Contribution;
import taperbook.result.Curve;
import taperbook.result.LibraryRow;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.session.Caveat;
import taperbook.session.Origin;
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
    optional(row.about().date());
    optional(row.about().place());
    optional(row.about().preconditioned());
    text(row.about().conditions());
    List<ReportNumber> all = row.numbers().all();
    out.writeInt(all.size());
    for (ReportNumber number : all) {
      number(number);
    }
    curve(row.curve());
    out.writeInt(row.caveats().size());
    for (Caveat.Kind kind : row.caveats()) {
      text(kind.name());
    }
  }

  private void optional(Optional<String> text) throws IOException {
    out.writeBoolean(text.isPresent());
    if (text.isPresent()) {
      text(text.get());
    }
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
      text(number.withheld().orElse(""));
    }
    origin(number.origin());
    out.writeInt(number.caveats().size());
    for (Caveat caveat : number.caveats()) {
      text(caveat.kind().name());
      text(caveat.fact());
      text(caveat.meaning());
    }
  }

  private <E extends Enum<E>> void names(Set<E> values) throws IOException {
    out.writeInt(values.size());
    for (E value : new TreeSet<>(values)) {
      text(value.name());
    }
  }

  private void measured(Outcome.Measured measured) throws IOException {
    Estimate estimate = measured.estimate();
    out.writeDouble(estimate.value());
    out.writeDouble(estimate.bounds().low());
    out.writeDouble(estimate.bounds().high());
    out.writeDouble(measured.coverage());
    out.writeInt(measured.budget().size());
    for (Contribution part : measured.budget()) {
      text(part.source().name());
      out.writeDouble(part.standardUncertainty());
      out.writeDouble(part.share());
    }
  }

  private void origin(Origin origin) throws IOException {
    text(origin.session());
    text(origin.against());
    List<RowRun> runs = RowRun.of(origin.rows());
    out.writeInt(runs.size());
    for (RowRun run : runs) {
      text(run.file());
      out.writeInt(run.firstLine());
      out.writeInt(run.lastLine());
    }
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
