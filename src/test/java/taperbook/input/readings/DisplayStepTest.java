package taperbook.input.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.format.NumberFormatter;
import taperbook.input.Given;
import taperbook.input.mapping.Foreign;
import taperbook.quantity.Unit;
import taperbook.session.Channel;
import taperbook.session.Trace;

/** Display steps derived from digits; values are those that the JDK parses. */
final class DisplayStepTest {
  @ParameterizedTest
  @CsvSource({
    "57,1",
    "57.6,0.1",
    "57.60,0.01",
    "0.30000000000000004,0.1",
    "0.7999999999999999,0.1",
    "57.599999999999994,0.1",
    "100.10000000000001,0.1",
    "12.340000000000002,0.01",
    "1e-05,0.00001",
    "5.76e1,0.1",
    "5.551115123125783e-17,0.000001",
    "0.333333333333333,0.000001",
    "0.3333333333333333,0.000001",
    "4.9E-324,0.000001"
  })
  void floating_point_noise_is_not_a_step(String written, double step) {
    Trace power =
        Given.goodSession("elapsed [s],soc [%],power [kW]\n0,10,1\n60,11," + written + "\n")
            .trace(Channel.POWER)
            .orElseThrow();
    assertThat(power.value(1)).isEqualTo(Double.parseDouble(written));
    assertThat(2 * power.halfStep()).isEqualTo(step, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({
    "kW,93.4,93.4 kW",
    "kW,120,120 kW",
    "kW,60.0,60.0 kW",
    "kW,0,0 kW",
    "kW,57.599999999999994,57.6 kW",
    "W,93412,93.412 kW",
    "W,93412.5,93.4125 kW",
  })
  void a_reading_keeps_the_decimal_places_of_its_cell(String unit, String written, String read) {
    Trace power =
        Given.goodSession("elapsed [s],power [" + unit + "]\n0,1\n60," + written + "\n120,1.5\n")
            .trace(Channel.POWER)
            .orElseThrow();
    int places = power.places(1).orElseThrow();
    assertThat(
            NumberFormatter.written(power.value(1), places, Unit.KILOWATT).replace('\u00a0', ' '))
        .isEqualTo(read);
  }

  @Test
  void computed_values_are_not_displayed_values() {
    Trace third =
        Given.goodSession("elapsed [s],power [kW]\n0,1\n60,0.3333333333333333\n")
            .trace(Channel.POWER)
            .orElseThrow();
    assertThat(third.places(0)).hasValue(0);
    assertThat(third.places(1)).isEmpty();
    Trace scaled =
        Foreign.session(
                "elapsed,t,s,,,,\nsoc,c,%,0.5,,,\npower,p,W,,,,\n",
                "t,c,p\n0,20,93000\n60,22,94000\n")
            .value()
            .orElseThrow()
            .trace(Channel.SOC)
            .orElseThrow();
    assertThat(scaled.value(1)).isEqualTo(11);
    assertThat(scaled.places(1)).isEmpty();
  }

  @Test
  void floating_point_noise_in_times_is_not_a_clock_step() {
    Trace soc =
        Given.goodSession("elapsed [s],soc [%]\n0,10\n0.30000000000000004,10\n60.5,11\n")
            .trace(Channel.SOC)
            .orElseThrow();
    assertThat(2 * soc.clockHalfStep()).isEqualTo(0.1, within(1e-12));
  }

  @Test
  void every_shortest_form_of_a_double_is_parsed() {
    Random random = new Random(17);
    StringBuilder rows = new StringBuilder("elapsed [s],soc [%],power [kW]\n");
    double[] values = new double[2000];
    for (int i = 0; i < values.length; i++) {
      values[i] = 100 * random.nextDouble() * Math.pow(10, -random.nextInt(20));
      rows.append(i).append(",10,").append(values[i]).append('\n');
    }
    Trace power = Given.goodSession(rows.toString()).trace(Channel.POWER).orElseThrow();
    assertThat(power.values()).containsExactly(values);
  }
}
