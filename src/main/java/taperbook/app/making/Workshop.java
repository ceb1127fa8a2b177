package taperbook.app.making;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import taperbook.app.line.Request;
import taperbook.app.project.OwnTemplates;
import taperbook.app.project.Project;
import taperbook.app.project.StoppedException;
import taperbook.app.publish.Earlier;
import taperbook.app.publish.PublishedFolder;
import taperbook.app.rows.RowMemory;
import taperbook.app.stamp.MadeDate;
import taperbook.app.stamp.ProgramStamp;
import taperbook.model.InputHash;
import taperbook.model.LibraryPlan;
import taperbook.problem.Checked;
import taperbook.read.PlainFile;
import taperbook.read.ProjectFolder;

/**
 * What every command works with: the project, its templates, the program and the pipeline.
 *
 * @param project the folder's content
 * @param templates the folder's own templates
 * @param program this program
 * @param madeDate the day that produced files bear
 * @param pipeline the stages
 * @param reports the folder that reports are published in
 * @param earlier the published versions of a report, by its name
 * @param remembers whether a library's rows are kept from one run to the next
 */
public record Workshop(
    Project project,
    OwnTemplates templates,
    ProgramStamp program,
    MadeDate madeDate,
    Pipeline pipeline,
    Path reports,
    Function<String, Earlier> earlier,
    boolean remembers) {

  public static Workshop in(Path folder, Map<String, String> environment) {
    if (!Files.isDirectory(folder.toAbsolutePath())) {
      throw new StoppedException("there is no folder " + folder + ". Is its name right?");
    }
    if (PlainFile.leadsOut(folder, folder.resolve("reports"))) {
      throw StoppedException.leadsOut(folder.resolve("reports"));
    }
    OwnTemplates templates = OwnTemplates.of(folder);
    Project project = new Project(new ProjectFolder(folder), templates.names());
    ProgramStamp program = ProgramStamp.ofThisProgram();
    MadeDate madeDate = new MadeDate(environment);
    return new Workshop(
        project,
        templates,
        program,
        madeDate,
        new Pipeline(project, templates, program, madeDate),
        folder.resolve("reports"),
        report -> Earlier.in(folder.resolve("reports"), report),
        true);
  }

  String fingerprint(List<InputHash> inputs) {
    return Fingerprint.of(inputs, templates, program, madeDate);
  }

  /** The report of this name, ready to be made, or every problem of its front matter. */
  public Checked<Making> making(String report) {
    if (!templates.problems().isEmpty()) {
      return Checked.refused(templates.problems());
    }
    return project
        .plan(report)
        .then(
            plan ->
                plan.<Checked<Making>>fold(
                    session ->
                        project
                            .sources(session)
                            .then(
                                s ->
                                    Checked.good(
                                        new SessionMaking(s, earlier.apply(report), this))),
                    library ->
                        project
                            .article(report)
                            .then(a -> Checked.good(new LibraryMaking(library, a, this)))));
  }

  /** The rows that are known of a library, for its plan and with these range tests. */
  RowMemory memory(LibraryPlan plan, List<InputHash> rangeTests) {
    return remembers
        ? RowMemory.of(
            reports,
            plan.name(),
            program.content() + plan.distances() + plan.window() + plan.style() + rangeTests)
        : RowMemory.none();
  }

  /** Paths of the folder's own templates, and where they may be. */
  List<String> templatePaths() {
    List<String> paths = new ArrayList<>(List.of(OwnTemplates.FOLDER));
    templates.files().forEach(file -> paths.add(file.path()));
    return paths;
  }

  public PublishedFolder published(String report) {
    return new PublishedFolder(reports, report);
  }

  /** The names asked for, or those of all reports if none is. */
  public List<String> asked(Request request) {
    return request.names().isEmpty() ? project.reportNames() : request.names();
  }
}
