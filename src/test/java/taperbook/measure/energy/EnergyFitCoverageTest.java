package taperbook.measure.energy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import taperbook.model.Channel;
import taperbook.model.Session;

/** How often the stated interval holds the truth, over sessions whose truth is known. */
final class EnergyFitCoverageTest {
  private static final int SESSIONS = 300;

  private static Optional<EnergyFit> fit(FilmedSession film) {
    Session session = film.session();
    return EnergyFit.of(
        session.trace(Channel.SOC).orElseThrow(),
        session.trace(Channel.ENERGY_ADDED),
        Optional.empty());
  }

  @Test
  void the_true_energy_for_each_per_cent_lies_inside_in_at_least_93_of_100_sessions() {
    long fitted =
        IntStream.rangeClosed(1, SESSIONS)
            .filter(seed -> fit(new FilmedSession(seed)).isPresent())
            .count();
    long inside =
        IntStream.rangeClosed(1, SESSIONS)
            .mapToObj(FilmedSession::new)
            .filter(
                film ->
                    fit(film)
                        .filter(f -> f.perPercent().bounds().contains(film.truth()))
                        .isPresent())
            .count();
    assertThat(fitted).as("sessions with a line").isGreaterThanOrEqualTo(SESSIONS * 95L / 100);
    assertThat(inside)
        .as("truth inside, of %d lines", fitted)
        .isGreaterThanOrEqualTo((long) Math.ceil(0.93 * fitted));
  }

  @Test
  void the_interval_is_not_so_wide_that_it_could_not_fail() {
    double median =
        IntStream.rangeClosed(1, SESSIONS)
            .mapToObj(FilmedSession::new)
            .flatMap(
                film ->
                    fit(film).stream().map(f -> f.perPercent().bounds().width() / 2 / film.truth()))
            .sorted()
            .skip(SESSIONS / 2)
            .findFirst()
            .orElseThrow();
    // A display of 1 % at both ends of 70 % alone would bound the quotient to about 1.4 %.
    assertThat(median).isLessThan(0.01);
  }
}
