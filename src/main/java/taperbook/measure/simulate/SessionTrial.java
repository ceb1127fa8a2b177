package taperbook.measure.simulate;

import java.util.EnumSet;
import java.util.List;
import taperbook.measure.montecarlo.MonteCarlo;
import taperbook.model.UncertaintySource;

/** Draws a session by all sources at once, as far as the outputs ask for it. */
final class SessionTrial implements MonteCarlo.Trial {
  private final DrawnSession drawn;
  private final Outputs.Output[] worked;

  /** The parts of the session that each output asks for. */
  private final int[] asked;

  private final Draws draws = draws();

  SessionTrial(DrawnSession drawn, List<Outputs.Output> outputs) {
    this.drawn = drawn;
    this.worked = outputs.toArray(Outputs.Output[]::new);
    this.asked = new int[outputs.size()];
    // A session that is drawn only to see what is asked for.
    drawn.draw(draws());
    drawn.work(outputs, new double[asked.length], asked);
  }

  private static Draws draws() {
    return new Draws(SessionSimulation.SEED, EnumSet.allOf(UncertaintySource.class));
  }

  @Override
  public void run(double[] outputs, int[] open) {
    int parts = 0;
    for (int k : open) {
      parts |= asked[k];
    }
    drawn.redraw(draws, parts);
    for (int k : open) {
      outputs[k] = worked[k].value().applyAsDouble(drawn);
    }
  }
}
