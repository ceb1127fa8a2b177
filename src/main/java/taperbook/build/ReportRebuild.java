package taperbook.build;

import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.TreeMap;
import taperbook.buildinfo.BuildInfo;
import taperbook.buildinfo.ReportDate;
import taperbook.cli.ProgressListener;
import taperbook.diagnostics.Checked;
import taperbook.input.folder.InMemoryFolder;
import taperbook.session.InputFile;
import taperbook.verify.CarriedReport;
import taperbook.workspace.Project;
import taperbook.workspace.ProjectTemplates;
import taperbook.workspace.PublishedVersions;

/**
 * Rebuilds a report from the files embedded in its PDF, in memory: no folder is read or written.
 */
public final class ReportRebuild {
  private static final String TEMPLATES = ProjectTemplates.FOLDER + "/";

  private ReportRebuild() {}

  /** Builds the report of the embedded files, with the date in the PDF. */
  public static Checked<ReportBuild.Made> of(CarriedReport carried) {
    Map<String, InputFile> own = new TreeMap<>();
    Map<String, InputFile> builtIn = new TreeMap<>();
    for (InputFile file : carried.files().values()) {
      boolean named = carried.numbers().hashes().containsKey(file.path());
      (named || !file.path().startsWith(TEMPLATES) ? own : builtIn).put(file.path(), file);
    }
    ProjectTemplates templates = ProjectTemplates.carried(own.values(), builtIn.values());
    ReportDate madeDate =
        new ReportDate(
            Map.of(
                "SOURCE_DATE_EPOCH",
                Long.toString(carried.made().atStartOfDay(ZoneOffset.UTC).toEpochSecond())));
    Project project = new Project(new InMemoryFolder(own), templates.names());
    CommandContext commandContext =
        new CommandContext(
            project,
            templates,
            BuildInfo.ofThisProgram(),
            madeDate,
            Path.of(""),
            report -> PublishedVersions.carried(report, own, carried.numbers()),
            false,
            ResultCache.none());
    return commandContext
        .reportBuild(carried.numbers().report())
        .then(making -> making.make(ProgressListener.NONE));
  }
}
