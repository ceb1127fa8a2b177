package taperbook.chart.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import taperbook.chart.model.Chart;
import taperbook.chart.model.FigureText;
import taperbook.chart.model.PlotLine;
import taperbook.format.Labels;
import taperbook.quantity.Estimate;

/** The marks at the states of charge that the tester requests. */
final class SocMarks {
  private final FigureText texts;

  SocMarks(FigureText texts) {
    this.texts = texts;
  }

  /** Returns marks on a curve over state of charge, each with its time. */
  List<Chart.Point> overSoc(PlotLine line) {
    List<Chart.Point> points = new ArrayList<>();
    for (int mark : reached()) {
      OptionalDouble y = line.yAt(mark);
      if (y.isPresent()) {
        List<String> label =
            List.of(Labels.of("mark.percent_after", mark), time(mark).orElseThrow());
        points.add(new Chart.Point(mark, y.getAsDouble(), Chart.Guide.DROP, label));
      }
    }
    return points;
  }

  /** Returns marks on the state of charge over time in minutes, each with its time. */
  List<Chart.Point> ofSoc() {
    List<Chart.Point> points = new ArrayList<>();
    for (int mark : reached()) {
      Estimate time = texts.estimate(id(mark)).orElseThrow();
      List<String> label =
          List.of(Labels.of("mark.percent_after_time", mark, time(mark).orElseThrow()));
      points.add(new Chart.Point(time.value() / 60, mark, Chart.Guide.DROP, label));
    }
    return points;
  }

  /** Describes each mark in a sentence: when it was reached, or why that is unknown. */
  String sentences() {
    List<String> sentences = new ArrayList<>();
    for (int mark : texts.wishes().socMarks()) {
      texts
          .sentence(mark + " % is reached after", "The time to " + mark + " %", id(mark))
          .ifPresent(sentences::add);
    }
    return String.join(" ", sentences);
  }

  /** Returns the marks whose times are known, in the requested order. */
  List<Integer> reached() {
    return texts.wishes().socMarks().stream().filter(m -> time(m).isPresent()).toList();
  }

  static String id(int mark) {
    return "time_to_soc_" + mark;
  }

  private Optional<String> time(int mark) {
    return texts.value(id(mark));
  }
}
