package taperbook.chart.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import taperbook.chart.model.Box;
import taperbook.chart.model.ChartStyle;
import taperbook.chart.model.Pen;

final class LabelPlacerTest {
  private static final ChartStyle STYLE = ChartStyle.print();
  private static final Box REGION = new Box(50, 40, 640, 300);

  static IntStream seeds() {
    return IntStream.rangeClosed(1, 200);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void labels_never_overlap_and_stay_in_the_region(int seed) {
    Random random = new Random(seed);
    LabelPlacer placer = new LabelPlacer(REGION, STYLE);
    placer.obstacles().avoid(new Line2D.Double(50, 340, 690, 40), Pen.SINGLE);
    List<Box> blocked = List.of(new Box(300, 200, 40, 20));
    blocked.forEach(placer.obstacles()::block);
    List<Box> placed = new ArrayList<>(blocked);
    for (int i = 0; i < 12; i++) {
      placer.place(callout(random)).ifPresent(p -> placed.add(p.box()));
    }
    assertThat(placed).hasSizeGreaterThan(6).allMatch(box -> box.isInside(REGION));
    for (int a = 0; a < placed.size(); a++) {
      for (int b = a + 1; b < placed.size(); b++) {
        assertThat(placed.get(a).overlaps(placed.get(b))).isFalse();
      }
    }
  }

  @Test
  void a_label_avoids_the_curve_if_possible() {
    Line2D curve = new Line2D.Double(50, 190, 690, 190);
    LabelPlacer placer = new LabelPlacer(REGION, STYLE);
    placer.obstacles().avoid(curve, Pen.SINGLE);
    Callout callout = at(300, 190, List.of(Callout.Side.RIGHT, Callout.Side.ABOVE), false);
    assertThat(placer.place(callout).orElseThrow().box().meets(curve)).isFalse();
  }

  @Test
  void an_optional_label_without_space_is_omitted() {
    LabelPlacer placer = new LabelPlacer(REGION, STYLE);
    placer.obstacles().block(new Box(150, 60, 400, 250));
    assertThat(placer.place(at(350, 185, List.of(Callout.Side.values()), false))).isEmpty();
  }

  @Test
  void a_required_label_moves_farther_away_and_gets_a_leader() {
    LabelPlacer placer = new LabelPlacer(REGION, STYLE);
    placer.obstacles().block(new Box(150, 60, 400, 250));
    Optional<Callout.Placed> placed =
        placer.place(at(350, 185, List.of(Callout.Side.values()), true));
    assertThat(placed.flatMap(placer::leader)).isPresent();
  }

  @Test
  void a_line_label_is_not_placed_near_another_line() {
    LabelPlacer placer = new LabelPlacer(REGION, STYLE);
    Line2D own = new Line2D.Double(50, 190, 690, 190);
    Line2D other = new Line2D.Double(50, 156, 690, 156);
    placer.obstacles().avoid(own, Pen.FIRST);
    placer.obstacles().avoid(other, Pen.SECOND);
    Box box = placer.place(named(300, 190, "A one", 0)).orElseThrow().box();
    assertThat(box.distanceTo(own)).isLessThan(box.distanceTo(other));
    assertThat(box.top()).isGreaterThan(190);
  }

  @Test
  void a_shorter_form_of_a_label_is_used_if_the_longer_one_does_not_fit() {
    LabelPlacer placer = new LabelPlacer(REGION, STYLE);
    placer.obstacles().block(new Box(50, 40, 560, 300));
    List<Callout> forms =
        List.of(named(650, 190, "A second battery revision", 0), named(650, 190, "A", 36));
    assertThat(placer.place(forms).orElseThrow().callout().lines()).containsExactly("A");
  }

  private static Callout named(double x, double y, String text, double handicap) {
    List<Callout.Spot> spots = List.of(new Callout.Spot(x, y, 0));
    List<Callout.Side> sides = List.of(Callout.Side.ABOVE, Callout.Side.BELOW);
    return new Callout(
        spots, List.of(text), Color.BLACK, Optional.of(Pen.FIRST), sides, true, handicap);
  }

  private static Callout callout(Random random) {
    double x = 50 + 640 * random.nextDouble();
    double y = 40 + 300 * random.nextDouble();
    return at(x, y, List.of(Callout.Side.values()), random.nextBoolean());
  }

  private static Callout at(double x, double y, List<Callout.Side> sides, boolean required) {
    return new Callout(
        new Callout.Spot(x, y, 0),
        List.of("80 % after", "24 min 40 s"),
        Color.BLACK,
        sides,
        required);
  }
}
