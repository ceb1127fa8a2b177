package taperbook.build;

import java.io.DataInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
        new LibraryRow.About(text(), optional(), optional(), optional(), text());
    int count = in.readInt();
    List<ReportNumber> numbers = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      numbers.add(number());
    }
    Curve curve = curve();
    Set<Caveat.Kind> kinds = EnumSet.noneOf(Caveat.Kind.class);
    int caveats = in.readInt();
    for (int i = 0; i < caveats; i++) {
      kinds.add(Caveat.Kind.valueOf(text()));
    }
    return new LibraryRow(session, about, new Numbers(numbers), curve, kinds);
  }

  private Optional<String> optional() throws IOException {
    return in.readBoolean() ? Optional.of(text()) : Optional.empty();
  }

  private ReportNumber number() throws IOException {
    String id = text();
    String label = text();
    Unit unit = Unit.valueOf(text());
    Method method = Method.valueOf(text());
    Basis basis = Basis.valueOf(text());
    Set<Input> inputs = names(Input.class);
    Set<Role> roles = names(Role.class);
    Outcome outcome = in.readBoolean() ? measured() : new Outcome.Withheld(text());
    Origin origin = origin();
    int count = in.readInt();
    List<Caveat> caveats = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      caveats.add(new Caveat(Caveat.Kind.valueOf(text()), text(), text()));
    }
    Metric metric = new Metric(id, label, unit, method, basis, inputs, roles);
    return new ReportNumber(metric, outcome, origin, caveats);
  }

  private <E extends Enum<E>> Set<E> names(Class<E> type) throws IOException {
    Set<E> values = EnumSet.noneOf(type);
    for (int left = in.readInt(); left > 0; left--) {
      values.add(Enum.valueOf(type, text()));
    }
    return values;
  }

  private Outcome measured() throws IOException {
    double value = in.readDouble();
    Interval bounds = new Interval(in.readDouble(), in.readDouble());
    double coverage = in.readDouble();
    int count = in.readInt();
    List<Contribution> budget = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      budget.add(
          new Contribution(UncertaintySource.valueOf(text()), in.readDouble(), in.readDouble()));
    }
    return new Outcome.Measured(new Estimate(value, bounds), coverage, budget);
  }

  private Origin origin() throws IOException {
    String session = text();
    String against = text();
    int count = in.readInt();
    List<RowRun> runs = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      runs.add(new RowRun(text(), in.readInt(), in.readInt()));
    }
    return new Origin(session, against, RowRun.rows(runs));
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
