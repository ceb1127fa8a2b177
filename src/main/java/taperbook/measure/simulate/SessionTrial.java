package taperbook.measure.simulate;

import java.util.EnumSet;
import java.util.List;
import java.util.function.ToDoubleFunction;
import taperbook.measure.montecarlo.MonteCarlo;
import taperbook.model.UncertaintySource;

/** Draws a session by all sources at once, as far as the outputs ask for it. */
final class SessionTrial implements MonteCarlo.Trial {
  private final DrawnSession drawn;
  private final List<ToDoubleFunction<DrawnSession>> values;
  private final Draws draws =
      new Draws(SessionSimulation.SEED, EnumSet.allOf(UncertaintySource.class));
  private int[] known = {};
  private int parts;

  SessionTrial(DrawnSession drawn, List<Outputs.Output> outputs) {
    this.drawn = drawn;
    this.values = outputs.stream().map(Outputs.Output::value).toList();
  }

  @Override
  public void run(double[] outputs, int[] open) {
    boolean begins = open != known;
    if (begins) {
      // What is asked for shows when it is asked: the first trial of a block draws everything.
      known = open;
      parts = DrawnSession.ALL;
      drawn.forgetAsked();
    }
    drawn.redraw(draws, parts);
    for (int k : open) {
      outputs[k] = values.get(k).applyAsDouble(drawn);
    }
    if (begins) {
      parts = drawn.asked();
    }
  }
}
