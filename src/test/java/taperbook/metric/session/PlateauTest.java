package taperbook.metric.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import taperbook.metric.Sessions;
import taperbook.metric.recording.Recording;
import taperbook.quantity.Estimate;
import taperbook.result.ReportNumber;
import taperbook.session.Caveat;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.Session;

/** What limits a plateau: the rating of the station, a current, or an unknown cause. */
@Tag("slow")
final class PlateauTest {
  private static final double[] SECONDS =
      IntStream.rangeClosed(0, 20).mapToDouble(i -> 60 * i).toArray();

  /** Ten minutes at a power, then a fall. */
  private static Sessions plateauAt(double kilowatts) {
    double[] power =
        Arrays.stream(SECONDS)
            .map(t -> t <= 600 ? kilowatts : kilowatts * (1 - (t - 600) / 900))
            .map(Math::rint)
            .toArray();
    double[] soc = Arrays.stream(SECONDS).map(t -> Math.rint(10 + t / 20)).toArray();
    return Sessions.session()
        .channel(Channel.SOC, 0.5, SECONDS, soc)
        .channel(Channel.POWER, 0.5, SECONDS, power);
  }

  private static Sessions rated(Sessions session, double station, double car) {
    return session
        .amount(ConditionItem.STATION_RATED_POWER, station, 0.5)
        .amount(ConditionItem.VEHICLE_RATED_PEAK_POWER, car, 0.5);
  }

  private static List<String> limits(Session session) {
    return Sessions.measure(session).main().caveats().stream()
        .filter(c -> c.kind() == Caveat.Kind.STATION_LIMIT)
        .map(Caveat::sentence)
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "150, 150, 200, the station set the plateau",
    "146, 150, 200, the station set the plateau",
    "150, 150, 151, whether the station or the car set the plateau is not known",
    "140, 150, 200, something else set the limit first",
    "160, 150, 155, below the 155",
    "160, 150, 150, one of the two is not right"
  })
  void the_readings_and_both_ratings_determine_the_caveat(
      double power, double station, double car, String expected) {
    assertThat(limits(rated(plateauAt(power), station, car).build()))
        .singleElement()
        .asString()
        .contains(expected);
  }

  @Test
  void a_plateau_below_both_ratings_is_attributed_to_the_car() {
    assertThat(limits(rated(plateauAt(120), 200, 130).build())).isEmpty();
  }

  @Test
  void without_the_cars_rating_the_station_is_a_possible_limit() {
    Session session = plateauAt(150).amount(ConditionItem.STATION_RATED_POWER, 150, 0.5).build();
    assertThat(limits(session)).singleElement().asString().contains("may have set the plateau");
  }

  @Test
  void a_brief_peak_is_not_a_plateau() {
    double[] power = {80, 150, 80, 70, 60};
    Session session =
        rated(
                Sessions.session()
                    .channel(Channel.POWER, 0.5, new double[] {0, 300, 600, 900, 1200}, power),
                150,
                200)
            .build();
    assertThat(limits(session)).singleElement().asString().contains("may have set the limit");
  }

  @Test
  void the_power_display_of_the_station_is_compared_with_its_rating() {
    double[] station =
        Arrays.stream(SECONDS)
            .map(t -> t <= 600 ? 150 : Math.rint(150 * (1 - (t - 600) / 900)))
            .toArray();
    Session session =
        rated(plateauAt(142).channel(Channel.STATION_POWER, 0.5, SECONDS, station), 150, 200)
            .build();
    assertThat(limits(session))
        .singleElement()
        .asString()
        .contains("held at 150")
        .contains("the station set the plateau");
  }

  /** Voltage rises from 380 V by a share over ten minutes; current or power is constant. */
  private static Session electrical(double rise, boolean currentHeld) {
    double[] voltage =
        Arrays.stream(SECONDS).map(t -> Math.rint(380 * (1 + rise * t / 600))).toArray();
    double[] current = new double[SECONDS.length];
    double[] power = new double[SECONDS.length];
    for (int i = 0; i < SECONDS.length; i++) {
      double v = 380 * (1 + rise * SECONDS[i] / 600);
      double flat = currentHeld ? 400 : 400 * 380 / v;
      double now = SECONDS[i] <= 600 ? flat : flat * (1 - (SECONDS[i] - 600) / 900);
      current[i] = Math.rint(now);
      power[i] = Math.rint(v * now / 100) / 10;
    }
    return rated(
            Sessions.session()
                .channel(Channel.POWER, 0.05, SECONDS, power)
                .channel(Channel.VOLTAGE, 0.5, SECONDS, voltage)
                .channel(Channel.CURRENT, 0.5, SECONDS, current),
            350,
            200)
        .build();
  }

  private static ReportNumber limitCurrent(Session session) {
    return Sessions.measure(session).main().numbers().get("limit_current");
  }

  @Test
  void a_flat_current_under_a_rising_voltage_is_a_current_limit() {
    for (double rise : new double[] {0.01, 0.02, 0.06}) {
      Session session = electrical(rise, true);
      Estimate current = limitCurrent(session).estimate().orElseThrow();
      assertThat(current.value()).isEqualTo(400);
      assertThat(current.bounds().low()).isEqualTo(399.5);
      assertThat(current.bounds().high()).isEqualTo(400.5);
      assertThat(limits(session))
          .singleElement()
          .asString()
          .contains("current limit of 400\u00a0A")
          .contains("cannot be told");
    }
  }

  @Test
  void constant_power_at_rising_voltage_is_not_a_current_limit() {
    for (double rise : new double[] {0.002, 0.005, 0.01, 0.02, 0.06}) {
      Session session = electrical(rise, false);
      assertThat(limitCurrent(session).withheld()).as("rise %s", rise).isPresent();
      assertThat(limits(session)).isEmpty();
    }
  }

  @Test
  void a_constant_voltage_determines_nothing() {
    assertThat(limitCurrent(electrical(0, true)).withheld().orElseThrow()).contains("not flat");
  }

  @Test
  void missing_inputs_are_reported() {
    assertThat(limitCurrent(plateauAt(150).build()).withheld().orElseThrow())
        .isEqualTo("voltage and current were not both recorded");
    Session noPower =
        Sessions.session()
            .channel(Channel.SOC, 0.5, new double[] {0, 600}, new double[] {10, 40})
            .build();
    assertThat(limitCurrent(noPower).withheld()).hasValue(Recording.NO_POWER.text());
  }
}
