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
import taperbook.chart.render.Figure;
import taperbook.cli.Request;
import taperbook.diagnostics.Checked;
import taperbook.i18n.Texts;
import taperbook.input.folder.DiskFolder;
import taperbook.input.folder.RegularFile;
import taperbook.output.ReportJob;
import taperbook.plan.LibraryPlan;
import taperbook.result.Correction;
import taperbook.result.Results;
import taperbook.session.InputFile;
import taperbook.session.InputHash;
import taperbook.workspace.InputTables;
import taperbook.workspace.Project;
import taperbook.workspace.ProjectTemplates;
import taperbook.workspace.PublishedFolder;
import taperbook.workspace.PublishedVersions;
import taperbook.workspace.ReportSources;
import taperbook.workspace.StoppedException;

/**
 * The environment of a command: the project, its templates, the program and the pipeline.
 *
 * @param project the content of the project folder
 * @param templates the project's own templates
 * @param program this program
 * @param madeDate the date that output files carry
 * @param reports the folder that reports are published in
 * @param earlier the published versions of a report, by its name
 * @param remembers whether a library's rows are cached between runs
 * @param results the results of reports that this process has built
 */
public record CommandContext(
    Project project,
    ProjectTemplates templates,
    BuildInfo program,
    ReportDate madeDate,
    Path reports,
    Function<String, PublishedVersions> earlier,
    boolean remembers,
    ResultCache results) {

  /** Returns the context of a process that builds each report once. */
  public static CommandContext in(Path folder, Map<String, String> environment) {
    return in(folder, environment, ResultCache.none());
  }

  /** Returns the context of a project folder. */
  public static CommandContext in(
      Path folder, Map<String, String> environment, ResultCache results) {
    if (!Files.isDirectory(folder.toAbsolutePath())) {
      throw new StoppedException(Texts.of("command.command_context.there_is_no_folder_is", folder));
    }
    if (RegularFile.isOutside(folder, folder.resolve("reports"))) {
      throw StoppedException.outsideProject(folder.resolve("reports"));
    }
    ProjectTemplates templates = ProjectTemplates.of(folder);
    Project project = new Project(new DiskFolder(folder), templates.names());
    return new CommandContext(
        project,
        templates,
        BuildInfo.ofThisProgram(),
        new ReportDate(environment),
        folder.resolve("reports"),
        report -> PublishedVersions.in(folder.resolve("reports"), report),
        true,
        results);
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
                    session -> project.sources(session).then(s -> Checked.good(pipeline(s))),
                    library ->
                        project
                            .article(report)
                            .then(a -> Checked.good(new LibraryBuild(library, a, this)))));
  }

  /** Returns the pipeline of a session's report. */
  public Pipeline pipeline(ReportSources sources) {
    return new Pipeline(this, sources, earlier.apply(sources.plan().name()));
  }

  /**
   * Returns the job that writes a report or library.
   *
   * @param inputs every input file, including templates
   * @param attached the same files with their content; empty if too large
   */
  ReportJob job(
      Results results,
      List<Figure> figures,
      List<InputHash> inputs,
      List<InputFile> attached,
      List<Correction> corrections) {
    return new ReportJob(
        results,
        figures,
        templates.withBuiltIn(),
        inputs,
        attached,
        InputTables.of(attached),
        corrections,
        madeDate.of(results),
        program.name());
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
