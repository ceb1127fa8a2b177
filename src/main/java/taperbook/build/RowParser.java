package taperbook.build;

import java.io.DataInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import taperbook.i18n.Message;
import taperbook.plan.Basis;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.quantity.Unit;
import taperbook.result.Contribution;
import taperbook.result.Curve;
import taperbook.result.LibraryRow;
import taperbook.result.Method;
import taperbook.result.Metric;
import taperbook.result.Numbers;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.result.Role;
import taperbook.result.UncertaintySource;
import taperbook.session.Caveat;
import taperbook.session.Input;
import taperbook.session.Origin;
import taperbook.session.RowRun;

/** Parses the output of {@link RowWriter}. Texts that many rows share are stored once. */
final class RowParser {
  private final DataInputStream in;
  private final List<String> texts = new ArrayList<>();

  RowParser(DataInputStream in) {
    this.in = in;
  }

  String text() throws IOException {
    int number = in.readInt();
    if (number == texts.size()) {
      texts.add(new String(in.readNBytes(in.readInt()), StandardCharsets.UTF_8));
    }
    return texts.get(number);
  }

  LibraryRow row() throws IOException {
    String session = text();
    LibraryRow.About about =
        new LibraryRow.About(
            text(), optional(this::text), optional(this::text), optional(this::text), text());
    Numbers numbers = new Numbers(list(this::number));
    return new LibraryRow(session, about, numbers, curve(), names(Caveat.Kind.class));
  }

  /** Parses one value. */
  private interface Part<T> {
    T parse() throws IOException;
  }

  private <T> List<T> list(Part<T> part) throws IOException {
    List<T> values = new ArrayList<>();
    for (int left = in.readInt(); left > 0; left--) {
      values.add(part.parse());
    }
    return values;
  }

  private <T> Optional<T> optional(Part<T> part) throws IOException {
    return list(part).stream().findFirst();
  }

  private <E extends Enum<E>> Set<E> names(Class<E> type) throws IOException {
    Set<E> values = EnumSet.noneOf(type);
    values.addAll(list(() -> Enum.valueOf(type, text())));
    return values;
  }

  private ReportNumber number() throws IOException {
    Metric metric =
        new Metric(
            text(),
            text(),
            Unit.valueOf(text()),
            Method.valueOf(text()),
            Basis.valueOf(text()),
            names(Input.class),
            names(Role.class));
    Outcome outcome = in.readBoolean() ? measured() : new Outcome.Withheld(message());
    Origin origin = new Origin(text(), text(), RowRun.rows(list(this::run)));
    return new ReportNumber(metric, outcome, origin, list(this::caveat));
  }

  private Outcome measured() throws IOException {
    double value = in.readDouble();
    Interval bounds = new Interval(in.readDouble(), in.readDouble());
    return new Outcome.Measured(
        new Estimate(value, bounds), in.readDouble(), list(this::contribution));
  }

  private Contribution contribution() throws IOException {
    return new Contribution(UncertaintySource.valueOf(text()), in.readDouble(), in.readDouble());
  }

  private Caveat caveat() throws IOException {
    return new Caveat(Caveat.Kind.valueOf(text()), message(), optional(this::message));
  }

  private Message message() throws IOException {
    return new Message(text(), list(this::text));
  }

  private RowRun run() throws IOException {
    return new RowRun(text(), in.readInt(), in.readInt());
  }

  private Curve curve() throws IOException {
    int size = in.readInt();
    double[] x = new double[size];
    double[] y = new double[size];
    double[] low = new double[size];
    double[] high = new double[size];
    boolean[] wide = new boolean[size];
    for (int i = 0; i < size; i++) {
      x[i] = in.readDouble();
      y[i] = in.readDouble();
      low[i] = in.readDouble();
      high[i] = in.readDouble();
      wide[i] = in.readBoolean();
    }
    return new Curve(x, y, low, high, wide);
  }
}
