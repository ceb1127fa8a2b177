package taperbook.app;

import java.nio.charset.StandardCharsets;
import java.util.List;
import taperbook.model.InputFile;

/** One hash over all that a report depends on: its inputs, templates, and the program. */
final class Fingerprint {
  private Fingerprint() {}

  static String of(
      ReportSources sources, OwnTemplates templates, ProgramStamp program, MadeDate madeDate) {
    StringBuilder all = new StringBuilder();
    all.append(program.content()).append('\n').append(madeDate.fingerprint()).append('\n');
    for (List<InputFile> files : List.of(sources.files(), templates.files())) {
      for (InputFile file : files) {
        all.append(file.path()).append(' ').append(file.sha256()).append('\n');
      }
    }
    return new InputFile("", all.toString().getBytes(StandardCharsets.UTF_8)).sha256();
  }
}
