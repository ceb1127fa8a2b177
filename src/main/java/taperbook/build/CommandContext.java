package taperbook.build;

import java.nio.charset.StandardCharsets;
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
import taperbook.i18n.Texts;
import taperbook.input.folder.DiskFolder;
import taperbook.input.folder.RegularFile;
import taperbook.plan.LibraryPlan;
import taperbook.session.InputFile;
import taperbook.session.InputHash;
import taperbook.workspace.Project;
import taperbook.workspace.ProjectTemplates;
import taperbook.workspace.PublishedFolder;
import taperbook.workspace.PublishedVersions;
import taperbook.workspace.StoppedException;

/**
 * The environment of a command: the project, its templates, the program and the pipeline.
 *
 * @param project the content of the project folder
 * @param templates the project's own templates
 * @param program this program
 * @param madeDate the date that output files carry
 * @param pipeline the stages
 * @param reports the folder that reports are published in
 * @param earlier the published versions of a report, by its name
 * @param remembers whether a library's rows are cached between runs
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
      throw new StoppedException(Texts.of("command.command_context.there_is_no_folder_is", folder));
    }
    if (RegularFile.isOutside(folder, folder.resolve("reports"))) {
      throw StoppedException.outsideProject(folder.resolve("reports"));
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

  /** Returns a hash of everything that a report depends on: inputs, templates, and the program. */
  String fingerprint(List<InputHash> inputs) {
    StringBuilder all = new StringBuilder();
    all.append(program.content()).append('\n').append(madeDate.fingerprint()).append('\n');
    List<InputHash> files = new ArrayList<>(inputs);
    templates.files().forEach(file -> files.add(file.withoutContent()));
    for (InputHash file : files) {
      all.append(file.path()).append(' ').append(file.sha256()).append('\n');
    }
    return new InputFile("", all.toString().getBytes(StandardCharsets.UTF_8)).sha256();
  }

  /** Returns the build of the report with this name, or all problems of its front matter. */
  public Checked<ReportBuild> reportBuild(String report) {
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

  /** Returns the cached rows of a library, for its plan and with these range tests. */
  RowCache memory(LibraryPlan plan, List<InputHash> rangeTests) {
    return remembers
        ? RowCache.of(
            reports,
            plan.name(),
            program.content() + plan.distances() + plan.window() + plan.style() + rangeTests)
        : RowCache.none();
  }

  /** Returns the paths of the project's own templates and of their possible locations. */
  List<String> templatePaths() {
    List<String> paths = new ArrayList<>(List.of(ProjectTemplates.FOLDER));
    templates.files().forEach(file -> paths.add(file.path()));
    return paths;
  }

  public PublishedFolder published(String report) {
    return new PublishedFolder(reports, report);
  }

  /** Returns the requested names, or those of all reports if none is requested. */
  public List<String> requestedReports(Request request) {
    return request.names().isEmpty() ? project.reportNames() : request.names();
  }
}
