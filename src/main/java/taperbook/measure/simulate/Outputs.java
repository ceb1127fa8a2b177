package taperbook.measure.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import taperbook.measure.curve.Crossing;
import taperbook.measure.curve.LinearPower;
import taperbook.model.Basis;
import taperbook.model.Channel;
import taperbook.model.CommonGround;
import taperbook.model.Method;
import taperbook.model.Numbers;
import taperbook.model.ReportNumber;
import taperbook.model.ReportPlan;
import taperbook.model.Session;
import taperbook.model.SocWindow;
import taperbook.model.Trace;
import taperbook.model.WantedDistance;

/**
 * The numbers that are simulated, each as a function of a drawn session: the same definitions as in
 * measuring, on a course that is drawn instead of read. Only numbers that were measured.
 */
final class Outputs {
  /**
   * One simulated number.
   *
   * @param id its id
   * @param value its value for a drawn session, in the number's unit
   */
  record Output(String id, ToDoubleFunction<DrawnSession> value) {}

  private final ReportPlan plan;
  private final Session session;
  private final Numbers numbers;
  private final List<Output> outputs = new ArrayList<>();

  private Outputs(ReportPlan plan, Session session, Numbers numbers) {
    this.plan = plan;
    this.session = session;
    this.numbers = numbers;
  }

  static List<Output> of(ReportPlan plan, CommonGround ground, Session session, Numbers numbers) {
    Outputs all = new Outputs(plan, session, numbers);
    all.session();
    all.peak();
    plan.wishes().windows().forEach(all::window);
    plan.wishes().socMarks().forEach(all::mark);
    all.drive();
    plan.wishes().distances().forEach(all::distance);
    all.common(ground);
    all.outputs.addAll(RoadOutputs.of(plan, numbers));
    return all.outputs;
  }

  private void add(String id, ToDoubleFunction<DrawnSession> value) {
    if (numbers.estimate(id).isPresent()) {
      outputs.add(new Output(id, value));
    }
  }

  private void session() {
    add("start_soc", d -> d.soc().firstValue());
    add("end_soc", d -> d.soc().lastValue());
    add("session_time", DrawnSession::endSecond);
    boolean byCounter = byCounter("energy_added");
    channel(byCounter ? Channel.ENERGY_ADDED : Channel.POWER)
        .ifPresent(
            t -> {
              double from = byCounter ? Math.min(0, t.firstSecond()) : t.firstSecond();
              add("energy_added", d -> d.energy(byCounter, from, t.lastSecond()));
            });
    channel(Channel.SOC)
        .ifPresent(
            t -> {
              boolean counted = covers(Channel.ENERGY_ADDED, t.firstSecond(), t.lastSecond());
              ToDoubleFunction<DrawnSession> perShare =
                  d ->
                      d.energy(counted, t.firstSecond(), t.lastSecond())
                          / (d.soc().lastValue() - d.soc().firstValue());
              add("energy_per_soc", perShare);
              add("implied_full_energy", d -> 100 * perShare.applyAsDouble(d));
            });
  }

  private void peak() {
    add("peak_power", DrawnSession::peak);
    add("peak_reached_time", DrawnSession::peakSecond);
    add("peak_reached_soc", d -> d.soc().at(d.peakSecond()));
    boolean dense = channel(Channel.POWER).filter(Thinned::isDense).isPresent();
    if (!dense) {
      // A logger's power is taken as it is, so its hold keeps its bounds.
      add("peak_hold_time", d -> d.holdTo() - d.holdFrom());
      add("peak_hold_time_from", DrawnSession::holdFrom);
      add("peak_hold_soc_from", d -> d.soc().at(d.holdFrom()));
      add("peak_hold_soc_to", d -> d.soc().at(d.holdTo()));
    }
  }

  private void window(SocWindow window) {
    String id = window.idPart();
    ToDoubleFunction<DrawnSession> from = d -> d.soc().timeOf(window.from());
    ToDoubleFunction<DrawnSession> to = d -> d.soc().timeOf(window.to());
    boolean byCounter = byCounter("energy_soc_" + id);
    ToDoubleFunction<DrawnSession> time = d -> to.applyAsDouble(d) - from.applyAsDouble(d);
    ToDoubleFunction<DrawnSession> energy =
        d -> d.energy(byCounter, from.applyAsDouble(d), to.applyAsDouble(d));
    add("time_soc_" + id, time);
    add("energy_soc_" + id, energy);
    add(
        "average_power_" + id,
        d -> LinearPower.SECONDS_PER_HOUR * energy.applyAsDouble(d) / time.applyAsDouble(d));
    add("soc_average_power_" + id, d -> d.meanOverSoc(window.from(), window.to()));
  }

  private void mark(int mark) {
    ToDoubleFunction<DrawnSession> time = d -> Math.max(0, d.soc().timeOf(mark));
    add("time_to_soc_" + mark, time);
    numbers
        .estimate("time_to_soc_" + mark)
        .ifPresent(
            reached -> {
              boolean counted = covers(Channel.ENERGY_ADDED, reached.value(), reached.value());
              channel(counted ? Channel.ENERGY_ADDED : Channel.POWER)
                  .ifPresent(
                      t -> {
                        double start = counted ? Math.min(0, t.firstSecond()) : t.firstSecond();
                        add(
                            "energy_to_soc_" + mark,
                            d -> d.energy(counted, start, time.applyAsDouble(d)));
                      });
            });
    add("power_at_soc_" + mark, d -> d.power().at(time.applyAsDouble(d)));
    boolean rated = plan.style().basis() == Basis.RATED;
    add(
        "distance_to_soc_" + mark,
        d ->
            Math.max(0, mark - d.soc().firstValue())
                / 100
                * (rated ? d.drive().ratedRange() : d.drive().fullRange()));
  }

  private void drive() {
    add("consumption", d -> d.drive().consumption());
    add("driven_range_full", d -> d.drive().fullRange());
  }

  private void distance(WantedDistance distance) {
    String id = distance.idPart();
    double km = distance.kilometres();
    add("soc_for_" + id, d -> 100 * km / d.drive().fullRange());
    add("time_to_add_" + id, d -> timeToAdd(d, 100 * km / d.drive().fullRange()));
    add("time_to_add_" + id + "_rated", d -> timeToAdd(d, 100 * km / d.drive().ratedRange()));
    boolean byCounter = channel(Channel.ENERGY_ADDED).filter(t -> t.size() > 1).isPresent();
    add(
        "time_to_add_" + id + "_by_energy",
        d -> d.timeOfEnergy(byCounter, d.drive().consumption() * km / 1000));
  }

  private void common(CommonGround ground) {
    List<SocWindow> wished = plan.wishes().windows();
    ground.windows().stream().filter(w -> !wished.contains(w)).forEach(this::window);
    boolean rated = plan.style().basis() == Basis.RATED;
    for (SocWindow window : ground.windows()) {
      int from = window.from();
      for (WantedDistance distance : plan.wishes().distances()) {
        double km = distance.kilometres();
        add(
            CommonGround.timeToAddId(distance, from),
            d ->
                d.soc()
                        .timeOf(
                            from
                                + 100
                                    * km
                                    / (rated ? d.drive().ratedRange() : d.drive().fullRange()))
                    - d.soc().timeOf(from));
      }
    }
    ground.shared().ifPresent(w -> ground.energyKilowattHours().ifPresent(e -> energy(w, e)));
  }

  private void energy(SocWindow shared, int kilowattHours) {
    boolean byCounter =
        channel(Channel.SOC)
            .flatMap(soc -> Crossing.first(soc, shared.from()))
            .filter(c -> covers(Channel.ENERGY_ADDED, c.second(), c.second()))
            .isPresent();
    add(
        CommonGround.timeToAddId(kilowattHours, shared.from()),
        d -> d.timeOfEnergySince(d.soc().timeOf(shared.from()), byCounter, kilowattHours));
  }

  private static double timeToAdd(DrawnSession drawn, double share) {
    Path soc = drawn.soc();
    return soc.timeOf(soc.firstValue() + share) - soc.second(0);
  }

  private Optional<Trace> channel(Channel channel) {
    return session.trace(channel);
  }

  private boolean byCounter(String id) {
    return numbers
        .find(id)
        .map(ReportNumber::method)
        .filter(m -> m == Method.ENERGY_COUNTER)
        .isPresent();
  }

  /** True if a channel was recorded over a stretch; the counter counts from plugging in. */
  private boolean covers(Channel channel, double from, double to) {
    return channel(channel)
        .filter(t -> t.size() > 1)
        .filter(t -> Math.min(0, t.firstSecond()) <= from && to <= t.lastSecond())
        .isPresent();
  }
}
