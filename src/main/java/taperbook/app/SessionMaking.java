package taperbook.app;

import java.util.List;
import taperbook.problem.Checked;

/** Makes the report of a session. */
final class SessionMaking implements Making {
  private final ReportSources sources;
  private final Workshop workshop;

  SessionMaking(ReportSources sources, Workshop workshop) {
    this.sources = sources;
    this.workshop = workshop;
  }

  @Override
  public String fingerprint() {
    return workshop.fingerprint(sources);
  }

  @Override
  public Checked<Made> make() {
    return workshop
        .pipeline()
        .make(sources)
        .then(
            made ->
                Checked.good(
                    new Made(
                        made.files(),
                        fingerprint(),
                        List.of(),
                        new Summary(made.result()).lines())));
  }

  @Override
  public Findings findings() {
    return workshop.pipeline().findings(sources);
  }
}
