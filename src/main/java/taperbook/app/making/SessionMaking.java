package taperbook.app.making;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import taperbook.app.process.Steps;
import taperbook.app.project.Project;
import taperbook.app.project.ReportSources;
import taperbook.app.publish.Earlier;
import taperbook.model.InputFile;
import taperbook.model.InputHash;
import taperbook.problem.Checked;
import taperbook.words.Wording;

/** Makes the report of a session. */
final class SessionMaking implements Making {
  private final ReportSources sources;
  private final Earlier earlier;
  private final Workshop workshop;

  SessionMaking(ReportSources sources, Earlier earlier, Workshop workshop) {
    this.sources = sources;
    this.earlier = earlier;
    this.workshop = workshop;
  }

  @Override
  public String fingerprint() {
    List<InputHash> inputs = new ArrayList<>();
    sources.files().forEach(f -> inputs.add(f.withoutContent()));
    sources.plan().heading().versionDay().ifPresent(d -> inputs.addAll(earlier.hashesBefore(d)));
    return workshop.fingerprint(inputs);
  }

  @Override
  public List<String> paths() {
    Set<String> paths = new TreeSet<>(workshop.templatePaths());
    for (InputFile file : sources.files()) {
      paths.add(file.path());
      if (file.path().startsWith(Project.SESSIONS)) {
        paths.add(file.path().substring(0, file.path().lastIndexOf('/')));
      }
    }
    paths.addAll(earlier.paths());
    return List.copyOf(paths);
  }

  @Override
  public Checked<Made> make(Steps steps) {
    return workshop
        .pipeline()
        .make(sources, earlier, steps)
        .then(
            made -> {
              Summary summary = new Summary(made.result());
              return Checked.good(
                  new Made(
                      made.files(), fingerprint(), List.of(), summary.lines(), summary.printed()));
            });
  }

  @Override
  public Wording wording() {
    return new Wording(sources.plan().style());
  }

  @Override
  public Findings findings() {
    return workshop.pipeline().findings(sources, earlier);
  }
}
