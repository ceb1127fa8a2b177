package taperbook.metric.course;

import java.util.ArrayList;
import java.util.List;
import taperbook.session.Channel;
import taperbook.session.Session;

/**
 * Draws courses of a session from their joint distribution given all readings, by Gibbs sampling.
 *
 * <p>Given the scales of the steps of power ({@link PowerPrior}) and the place of each displayed
 * charge in its step ({@link ReadingHabit}), all unknowns of the {@link CourseModel} are jointly
 * normal and drawn at once ({@link ArrowSystem}); then the scales and places given them.
 */
final class CourseSampler {
  /** Number of times that the charge is linearised anew before courses are drawn. */
  private static final int LINEARISATIONS = 3;

  /** Number of sweeps before each linearisation, times the sweeps for each pair. */
  private static final int SETTLING = 20;

  private final CourseModel model;
  private final List<ReadingForm> forms;
  private final List<ReadingForm> formsOfCharge;
  private final int n;
  private final RandomNumbers random;
  private final PowerPrior walk;
  private final ReadingHabit habit;
  private final CourseBuilder builder;
  private final ArrowSystem whole;
  private final ArrowSystem system;
  private final double[] centre;
  private final double[] state;

  /** Sweeps for each drawn pair, to reduce autocorrelation; pairs of a log have almost none. */
  private final int rounds;

  private double[][] predicted = new double[0][];

  CourseSampler(Session session, long seed) {
    this.model = new CourseModel(new CourseData(session));
    this.forms = model.forms();
    this.formsOfCharge = model.formsOfCharge();
    this.n = model.cells();
    this.random = new RandomNumbers(seed);
    this.walk = new PowerPrior(model, random);
    this.habit = new ReadingHabit(model, random);
    this.builder = new CourseBuilder(model, random);
    this.whole = new ArrowSystem(n, CourseModel.BORDER);
    this.system = new ArrowSystem(n, CourseModel.BORDER);
    this.centre = new double[n + CourseModel.BORDER];
    this.state = new double[n + CourseModel.BORDER];
    this.rounds = model.data().isDense() ? 1 : 2;
    settle();
  }

  private void settle() {
    model.setReference(model.reference());
    for (int round = 0; round < LINEARISATIONS; round++) {
      // The mean of the second half: linearising at the centre of a single draw would add a bias.
      double[] mean = new double[centre.length];
      int sweeps = SETTLING * rounds;
      for (int i = 0; i < sweeps; i++) {
        sweep(round == 0 && 2 * i <= sweeps);
        if (round == 0 && 2 * i == sweeps) {
          habit.choose(centre);
        }
        for (int j = 0; 2 * i >= sweeps && j < mean.length; j++) {
          mean[j] += 2 * centre[j] / sweeps;
        }
      }
      model.setReference(mean);
    }
  }

  /** Performs one Gibbs sweep. */
  private void sweep(boolean rough) {
    whole.copy(model.fixed());
    walk.addTo(whole);
    habit.addTo(whole, rough);
    system.copy(whole);
    system.factor();
    // A logger's rows determine where a step is.
    if (!rough && !model.data().isDense()) {
      walk.moveSteps(whole, system);
    }
    system.solve(centre);
    for (int i = 0; i < state.length; i++) {
      state[i] = random.normal();
    }
    system.backward(state);
    for (int i = 0; i < state.length; i++) {
      state[i] += centre[i];
    }
    walk.drawScales(state);
    if (!rough) {
      habit.draw(state);
    }
  }

  /**
   * Draws courses in antithetic pairs about the centre of their distribution.
   *
   * @param pairs number of pairs
   * @param kept number of pairs whose predicted readings are kept, see {@link #influences()}
   */
  List<Course> draw(int pairs, int kept) {
    List<Course> courses = new ArrayList<>(2 * pairs);
    double[] mirrored = new double[state.length];
    predicted = new double[forms.size()][kept];
    for (int k = 0; k < pairs; k++) {
      for (int round = 0; round < rounds; round++) {
        sweep(false);
      }
      for (int i = 0; i < state.length; i++) {
        mirrored[i] = 2 * centre[i] - state[i];
      }
      builder.setCentre(centre);
      courses.add(builder.course(state));
      courses.add(builder.course(mirrored));
      if (k < kept) {
        for (int i = 0; i < forms.size(); i++) {
          predicted[i][k] = forms.get(i).of(state, n);
        }
      }
      for (ReadingForm form : formsOfCharge) {
        form.edges += form.part < 0 ? 1.0 / pairs : 0;
      }
    }
    return courses;
  }

  /** Returns the predictions of each reading in the kept draws. */
  List<Influence> influences() {
    double step = model.data().step(Channel.SOC);
    List<Influence> influences = new ArrayList<>();
    for (int i = 0; i < forms.size(); i++) {
      influences.add(Influence.of(forms.get(i), predicted[i], step));
    }
    return influences;
  }
}
