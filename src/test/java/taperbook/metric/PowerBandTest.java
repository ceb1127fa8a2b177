package taperbook.metric;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import taperbook.metric.course.Displays;
import taperbook.metric.course.TrueSession;
import taperbook.plan.ReportPlan;
import taperbook.quantity.SocWindow;
import taperbook.result.Curve;
import taperbook.session.Channel;
import taperbook.session.DisplayRounding;
import taperbook.session.RowsWritten;
import taperbook.session.Session;

/** How often the band around the power over the charge contains the true power. */
@Tag("slow")
final class PowerBandTest {
  private static final int SESSIONS = 40;
  private static final ReportPlan PLAN = Sessions.plan(List.of(new SocWindow(10, 80)), List.of());

  @Test
  void the_band_covers_the_true_power_as_often_as_stated() {
    int all = 0;
    int inside = 0;
    double width = 0;
    for (int seed = 1; seed <= SESSIONS; seed++) {
      Random random = new Random(seed);
      DisplayRounding rounding = seed % 2 == 0 ? DisplayRounding.NEAREST : DisplayRounding.DOWN;
      RowsWritten written = seed % 3 == 0 ? RowsWritten.AT_CHANGES : RowsWritten.AT_SET_TIMES;
      Displays.Way way = new Displays.Way(rounding, written, 1, true);
      TrueSession truth = TrueSession.of(random, 6, 85);
      Session session = Displays.byHand(truth, way, 25 + random.nextInt(20), random);
      Curve band = band(session);
      // The displayed value v represents the centre of the charges displayed as v.
      double half = session.trace(Channel.SOC).orElseThrow().halfStep();
      double offset = half - 2 * half * Displays.above(rounding);
      for (int i = 1; i + 1 < band.size(); i++) {
        double power = truth.power(truth.timeOf(band.x(i) + offset));
        all++;
        inside += band.low(i) <= power && power <= band.high(i) ? 1 : 0;
        width += (band.high(i) - band.low(i)) / power;
      }
    }
    assertThat(all).isGreaterThan(3000);
    assertThat((double) inside / all).isGreaterThanOrEqualTo(0.93);
    // A band as wide as the power itself would contain it and be uninformative.
    assertThat(width / all).isLessThan(0.25);
  }

  @Test
  void the_same_session_has_the_same_band() {
    Session session = session();
    Curve one = band(session);
    Curve other = band(session);
    for (int i = 0; i < one.size(); i++) {
      assertThat(other.low(i)).isEqualTo(one.low(i));
      assertThat(other.high(i)).isEqualTo(one.high(i));
    }
  }

  private static Session session() {
    Displays.Way way = new Displays.Way(DisplayRounding.DOWN, RowsWritten.MIXED, 8, false);
    return Displays.byHand(TrueSession.of(new Random(7), 5, 80), way, 20, new Random(8));
  }

  private static Curve band(Session session) {
    return ReportMetrics.measure(PLAN, session, List.of(), List.of())
        .main()
        .curves()
        .powerBand()
        .orElseThrow();
  }
}
