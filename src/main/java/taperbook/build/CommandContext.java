package taperbook.build;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import taperbook.buildinfo.BuildInfo;
import taperbook.buildinfo.ReportDate;
import taperbook.cli.Request;
import taperbook.diagnostics.Checked;
import taperbook.input.folder.DiskFolder;
import taperbook.input.folder.RegularFile;
import taperbook.plan.LibraryPlan;
import taperbook.session.InputHash;
import taperbook.workspace.Project;
import taperbook.workspace.ProjectTemplates;
import taperbook.workspace.PublishedFolder;
import taperbook.workspace.PublishedVersions;
import taperbook.workspace.StoppedException;

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
public record CommandContext(
    Project project,
    ProjectTemplates templates,
    BuildInfo program,
    ReportDate madeDate,
    Pipeline pipeline,
    Path reports,
    Function<String, PublishedVersions> earlier,
    boolean remembers) {

  public static CommandContext in(Path folder, Map<String, String> environment) {
    if (!Files.isDirectory(folder.toAbsolutePath())) {
      throw new StoppedException("there is no folder " + folder + ". Is its name right?");
    }
    if (RegularFile.leadsOut(folder, folder.resolve("reports"))) {
      throw StoppedException.leadsOut(folder.resolve("reports"));
    }
    ProjectTemplates templates = ProjectTemplates.of(folder);
    Project project = new Project(new DiskFolder(folder), templates.names());
    BuildInfo program = BuildInfo.ofThisProgram();
    ReportDate madeDate = new ReportDate(environment);
    return new CommandContext(
        project,
        templates,
        program,
        madeDate,
        new Pipeline(project, templates, program, madeDate),
        folder.resolve("reports"),
        report -> PublishedVersions.in(folder.resolve("reports"), report),
        true);
  }

  String fingerprint(List<InputHash> inputs) {
    return Fingerprint.of(inputs, templates, program, madeDate);
  }

  /** The report of this name, ready to be made, or every problem of its front matter. */
  public Checked<ReportBuild> making(String report) {
    if (!templates.problems().isEmpty()) {
      return Checked.refused(templates.problems());
    }
    return project
        .plan(report)
        .then(
            plan ->
                plan.<Checked<ReportBuild>>fold(
                    session ->
                        project
                            .sources(session)
                            .then(
                                s ->
                                    Checked.good(
                                        new SessionReportBuild(s, earlier.apply(report), this))),
                    library ->
                        project
                            .article(report)
                            .then(a -> Checked.good(new LibraryBuild(library, a, this)))));
  }

  /** The rows that are known of a library, for its plan and with these range tests. */
  RowCache memory(LibraryPlan plan, List<InputHash> rangeTests) {
    return remembers
        ? RowCache.of(
            reports,
            plan.name(),
            program.content() + plan.distances() + plan.window() + plan.style() + rangeTests)
        : RowCache.none();
  }

  /** Paths of the folder's own templates, and where they may be. */
  List<String> templatePaths() {
    List<String> paths = new ArrayList<>(List.of(ProjectTemplates.FOLDER));
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
