package taperbook.metric.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Compares the bordered banded system with Gaussian elimination of the full system. */
final class ArrowSystemTest {
  private static final int N = 9;
  private static final int M = 3;
  private static final int SIZE = N + M;
  private static final int DRAWS = 100_000;

  /** A random system, assembled in both forms from the same observations. */
  private static final class Both {
    final ArrowSystem arrow = new ArrowSystem(N, M);
    final double[][] matrix = new double[SIZE][SIZE];
    final double[] side = new double[SIZE];

    Both(long seed) {
      Random random = new Random(seed);
      for (int first = -1; first < N; first++) {
        double[] banded = random.doubles(3, -1, 1).toArray();
        double[] bordered = random.doubles(M, -1, 1).toArray();
        double value = random.nextGaussian();
        double weight = 0.5 + random.nextDouble();
        arrow.add(first, banded, bordered, value, weight);
        double[] form = new double[SIZE];
        for (int i = 0; i < 3; i++) {
          if (first + i >= 0 && first + i < N) {
            form[first + i] = banded[i];
          }
        }
        System.arraycopy(bordered, 0, form, N, M);
        dense(form, value, weight);
      }
      for (int first = -1; first + 2 < N; first++) {
        arrow.addDifference(first, 1, -2.5, 1.5, 0.7);
        double[] form = new double[SIZE];
        if (first >= 0) {
          form[first] = 1;
        }
        form[first + 1] = -2.5;
        form[first + 2] = 1.5;
        dense(form, 0, 0.7);
      }
      for (int i = 0; i < M; i++) {
        arrow.addBorder(i, 0.4);
        double[] form = new double[SIZE];
        form[N + i] = 1;
        dense(form, 0, 0.4);
      }
    }

    private void dense(double[] form, double value, double weight) {
      for (int i = 0; i < SIZE; i++) {
        for (int j = 0; j < SIZE; j++) {
          matrix[i][j] += weight * form[i] * form[j];
        }
        side[i] += weight * form[i] * value;
      }
    }
  }

  /** Solution by Gaussian elimination with pivoting; the last element is the determinant. */
  private static double[] eliminated(double[][] matrix, double[] side) {
    double[][] a = Arrays.stream(matrix).map(double[]::clone).toArray(double[][]::new);
    double[] x = Arrays.copyOf(side, SIZE + 1);
    double determinant = 1;
    for (int i = 0; i < SIZE; i++) {
      int pivot = i;
      for (int k = i + 1; k < SIZE; k++) {
        pivot = Math.abs(a[k][i]) > Math.abs(a[pivot][i]) ? k : pivot;
      }
      if (pivot != i) {
        double[] row = a[i];
        a[i] = a[pivot];
        a[pivot] = row;
        double value = x[i];
        x[i] = x[pivot];
        x[pivot] = value;
        determinant = -determinant;
      }
      determinant *= a[i][i];
      for (int k = i + 1; k < SIZE; k++) {
        double factor = a[k][i] / a[i][i];
        for (int j = i; j < SIZE; j++) {
          a[k][j] -= factor * a[i][j];
        }
        x[k] -= factor * x[i];
      }
    }
    for (int i = SIZE - 1; i >= 0; i--) {
      for (int j = i + 1; j < SIZE; j++) {
        x[i] -= a[i][j] * x[j];
      }
      x[i] /= a[i][i];
    }
    x[SIZE] = determinant;
    return x;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void the_solution_is_that_of_the_full_system(long seed) {
    Both both = new Both(seed);
    double[] expected = Arrays.copyOf(eliminated(both.matrix, both.side), SIZE);
    ArrowSystem copied = new ArrowSystem(N, M);
    copied.copy(both.arrow);
    for (ArrowSystem system : new ArrowSystem[] {both.arrow, copied}) {
      system.factor();
      double[] solution = new double[SIZE];
      system.solve(solution);
      assertThat(solution).containsExactly(expected, within(1e-10));
    }
  }

  /**
   * With all normal unknowns integrated out: exp(b' A^-1 b / 2) over the root of the determinant of
   * A, by the Gaussian integral.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void the_evidence_is_the_integral_over_all_unknowns(long seed) {
    Both both = new Both(seed);
    double[] solved = eliminated(both.matrix, both.side);
    double squares = 0;
    for (int i = 0; i < SIZE; i++) {
      squares += both.side[i] * solved[i];
    }
    both.arrow.factor();
    assertThat(both.arrow.logEvidence())
        .isCloseTo(squares / 2 - Math.log(solved[SIZE]) / 2, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void the_variance_of_a_form_is_its_square_in_the_inverse(long seed) {
    Both both = new Both(seed);
    both.arrow.factor();
    double[] banded = {0.7, -1.3, 0.4};
    double[] bordered = {0.2, -0.5, 0.9};
    for (int first = -1; first <= N; first++) {
      double[] form = new double[SIZE];
      for (int i = 0; i < 3; i++) {
        if (first + i >= 0 && first + i < N) {
          form[first + i] = banded[i];
        }
      }
      System.arraycopy(bordered, 0, form, N, M);
      double[] solved = eliminated(both.matrix, form);
      double expected = 0;
      for (int i = 0; i < SIZE; i++) {
        expected += form[i] * solved[i];
      }
      assertThat(both.arrow.variance(first, banded, bordered)).isCloseTo(expected, within(1e-10));
    }
    assertThat(both.arrow.size()).isEqualTo(N);
    assertThat(both.arrow.border()).isEqualTo(M);
  }

  @Test
  void draws_have_the_inverse_of_the_matrix_as_their_covariance() {
    Both both = new Both(6);
    both.arrow.factor();
    RandomNumbers random = new RandomNumbers(6);
    double[][] covariance = new double[SIZE][SIZE];
    double[] x = new double[SIZE];
    for (int k = 0; k < DRAWS; k++) {
      for (int i = 0; i < SIZE; i++) {
        x[i] = random.normal();
      }
      both.arrow.backward(x);
      for (int i = 0; i < SIZE; i++) {
        for (int j = 0; j < SIZE; j++) {
          covariance[i][j] += x[i] * x[j] / DRAWS;
        }
      }
    }
    double[][] inverse = new double[SIZE][];
    for (int i = 0; i < SIZE; i++) {
      double[] unit = new double[SIZE];
      unit[i] = 1;
      inverse[i] = Arrays.copyOf(eliminated(both.matrix, unit), SIZE);
    }
    for (int i = 0; i < SIZE; i++) {
      for (int j = 0; j < SIZE; j++) {
        // Variance of a product of normal numbers: s_ii s_jj + s_ij squared; the tolerance is five
        // standard deviations.
        double spread =
            Math.sqrt((inverse[i][i] * inverse[j][j] + inverse[i][j] * inverse[i][j]) / DRAWS);
        assertThat(covariance[i][j]).isCloseTo(inverse[i][j], within(5 * spread));
      }
    }
  }

  @Test
  void a_cleared_system_accepts_new_observations() {
    Both both = new Both(7);
    Both other = new Both(8);
    both.arrow.clear();
    both.arrow.copy(other.arrow);
    both.arrow.factor();
    double[] solution = new double[SIZE];
    both.arrow.solve(solution);
    assertThat(solution)
        .containsExactly(Arrays.copyOf(eliminated(other.matrix, other.side), SIZE), within(1e-10));
  }
}
