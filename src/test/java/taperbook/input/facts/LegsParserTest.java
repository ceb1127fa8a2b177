package taperbook.input.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import taperbook.input.Given;
import taperbook.quantity.Estimate;
import taperbook.quantity.Interval;
import taperbook.session.Leg;
import taperbook.session.RowRef;

final class LegsParserTest {
  @Test
  void rows_are_converted_to_legs() {
    List<Leg> legs =
        Given.good(
                Given.legs(
                    """
                    leg,distance [mi],duration [h:min:s],energy used [kWh],start soc [%],end soc [%],note
                    out,100,1:30:00,23.5,92,65,dry
                    ,55.5,,,,,
                    """))
            .legs();
    Leg out = legs.get(0);
    assertThat(out.name()).isEqualTo("out");
    assertThat(out.distance().value()).isCloseTo(160.9344, within(1e-9));
    assertThat(out.distance().bounds().low()).isCloseTo(99.5 * 1.609344, within(1e-9));
    assertThat(out.duration()).contains(Estimate.around(5400, 0.5));
    assertThat(out.energyUsed()).contains(Estimate.around(23.5, 0.05));
    assertThat(out.soc())
        .contains(new Leg.Span(Estimate.around(92, 0.5), Estimate.around(65, 0.5)));
    assertThat(out.row()).isEqualTo(new RowRef("l.csv", 2));
    assertThat(legs.get(1).name()).isEqualTo("line 3");
    assertThat(legs.get(1).soc()).isEqualTo(Optional.empty());
    assertThat(legs.get(1).duration()).isEqualTo(Optional.empty());
    assertThat(legs.get(1).distance().bounds())
        .isEqualTo(new Interval(55.45 * 1.609344, 55.55 * 1.609344));
  }

  @Test
  void every_problem_is_reported() {
    assertThat(
            Given.sentences(
                Given.legs(
                    """
                    leg,distance [km],duration [min],start soc [%],end soc [%],energy used [kWh]
                    out,,x,92,,1
                    back,0,5,,11,1001
                    """)))
        .containsExactly(
            "l.csv:2:2: found an empty cell; expected the distance of the leg. To fix: write the"
                + " number, or remove the row. [cell-not-a-number]",
            "l.csv:2:3: found \"x\"; expected a time from 0 to 6000 min. To fix: leave the cell"
                + " empty. [cell-not-a-number]",
            "l.csv:2:5: found an empty cell; expected the state of charge at the end, as that at the"
                + " start is there. To fix: write the number, or remove the row."
                + " [cell-not-a-number]",
            "l.csv:3:2: found \"0\"; expected a number above 0 and up to 3000 km. To fix: correct"
                + " the value, or the unit in the column head. [cell-out-of-range]",
            "l.csv:3:4: found an empty cell; expected the state of charge at the start, as that at"
                + " the end is there. To fix: write the number, or remove the row."
                + " [cell-not-a-number]",
            "l.csv:3:6: found \"1001\"; expected a number from -100 to 1000 kWh. To fix: correct the"
                + " value, or the unit in the column head. [cell-out-of-range]");
  }

  @Test
  void leg_and_distance_are_required() {
    assertThat(Given.sentences(Given.legs("note\nx\n")))
        .containsExactly(
            "l.csv:1: found the columns \"note\"; expected a column \"leg\". To fix: add the"
                + " column. [column-missing]",
            "l.csv:1: found the columns \"note\"; expected a column \"distance [km]\". To fix: add"
                + " the column. [column-missing]");
  }
}
