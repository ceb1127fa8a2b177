package taperbook.build;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import taperbook.buildinfo.BuildInfo;
import taperbook.buildinfo.ReportDate;
import taperbook.session.InputFile;
import taperbook.session.InputHash;
import taperbook.workspace.ProjectTemplates;

/** A hash of everything that a report depends on: its inputs, templates, and the program. */
final class Fingerprint {
  private Fingerprint() {}

  static String of(
      List<InputHash> inputs, ProjectTemplates templates, BuildInfo program, ReportDate madeDate) {
    StringBuilder all = new StringBuilder();
    all.append(program.content()).append('\n').append(madeDate.fingerprint()).append('\n');
    List<InputHash> files = new ArrayList<>(inputs);
    templates.files().forEach(file -> files.add(file.withoutContent()));
    for (InputHash file : files) {
      all.append(file.path()).append(' ').append(file.sha256()).append('\n');
    }
    return new InputFile("", all.toString().getBytes(StandardCharsets.UTF_8)).sha256();
  }
}
