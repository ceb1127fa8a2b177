package taperbook.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
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
 */
record Workshop(
    Project project,
    OwnTemplates templates,
    ProgramStamp program,
    MadeDate madeDate,
    Pipeline pipeline,
    Path reports) {

  static Workshop in(Path folder, Map<String, String> environment) {
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
        folder.resolve("reports"));
  }

  String fingerprint(ReportSources sources) {
    return Fingerprint.of(sources, templates, program, madeDate);
  }

  PublishedFolder published(String report) {
    return new PublishedFolder(reports, report);
  }

  /** The names asked for, or those of all reports if none is. */
  List<String> asked(Request request) {
    return request.names().isEmpty() ? project.reportNames() : request.names();
  }
}
