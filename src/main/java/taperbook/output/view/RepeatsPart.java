package taperbook.output.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import taperbook.format.NumberFormatter;
import taperbook.i18n.Texts;
import taperbook.output.view.NumberTable.Cell;
import taperbook.output.view.NumberTable.Head;
import taperbook.output.view.NumberTable.RowView;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;
import taperbook.result.SessionResult;
import taperbook.session.ConditionItem;
import taperbook.session.Session;

/** The runs of the reported session: each headline number in every run, and over all runs. */
final class RepeatsPart {
  private final ReportResult result;
  private final NumberViews views;

  RepeatsPart(NumberViews views) {
    this.result = views.result();
    this.views = views;
  }

  /** The names of the runs, and the table. */
  record Repeats(boolean present, List<String> runs, NumberTable<Row> table) {}

  /** The values of a number in the runs, {@code each}; then the numbers over them. */
  record Row(@Unwrapped Head head, List<String> each, List<Cell> cells) {}

  Repeats view() {
    boolean present = !result.runs().repeats().isEmpty();
    return new Repeats(
        present,
        runs().map(s -> called(s.session())).toList(),
        new NumberTable<>(
            Texts.of("head.number"),
            Texts.all("head.mean", "head.run_spread", "head.next_run").stream()
                .map(Head::of)
                .toList(),
            "",
            present
                ? result.main().numbers().headline().stream().map(this::row).toList()
                : List.of()));
  }

  private Stream<SessionResult> runs() {
    return Stream.concat(Stream.of(result.main()), result.runs().repeats().stream());
  }

  private static String called(Session session) {
    Optional<String> date =
        session.conditions().text(ConditionItem.DATE).map(NumberFormatter::dateOrAsIs);
    return date.map(d -> d + " (" + session.name() + ")").orElse(session.name());
  }

  private Row row(ReportNumber number) {
    List<Optional<ReportNumber>> each = runs().map(s -> s.numbers().measured(number.id())).toList();
    List<Optional<ReportNumber>> numbers = new ArrayList<>(each);
    for (String over : List.of("_mean", "_run_spread", "_next_run")) {
      numbers.add(result.main().numbers().find(number.id() + over));
    }
    RowView row = views.row(new NumberTable.Row(number.label(), numbers));
    return new Row(
        row.head(),
        row.cells().stream()
            .limit(each.size())
            .map(c -> c.shown().shown())
            .map(v -> v.isEmpty() ? "\u2013" : v)
            .toList(),
        row.cells().subList(each.size(), numbers.size()));
  }
}
