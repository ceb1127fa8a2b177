package taperbook.app.making;

import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.TreeMap;
import taperbook.app.process.Steps;
import taperbook.app.project.OwnTemplates;
import taperbook.app.project.Project;
import taperbook.app.publish.Earlier;
import taperbook.app.stamp.MadeDate;
import taperbook.app.stamp.ProgramStamp;
import taperbook.model.InputFile;
import taperbook.problem.Checked;
import taperbook.proof.CarriedReport;
import taperbook.read.CarriedFolder;

/** Makes a report again from what its PDF carries, in memory: no folder is read or written. */
public final class Remaking {
  private static final String TEMPLATES = OwnTemplates.FOLDER + "/";

  private Remaking() {}

  /** The report that the carried files give, of the day that the PDF bears. */
  public static Checked<Making.Made> of(CarriedReport carried) {
    Map<String, InputFile> own = new TreeMap<>();
    Map<String, InputFile> builtIn = new TreeMap<>();
    for (InputFile file : carried.files().values()) {
      boolean named = carried.numbers().hashes().containsKey(file.path());
      (named || !file.path().startsWith(TEMPLATES) ? own : builtIn).put(file.path(), file);
    }
    OwnTemplates templates = OwnTemplates.carried(own.values(), builtIn.values());
    MadeDate madeDate =
        new MadeDate(
            Map.of(
                "SOURCE_DATE_EPOCH",
                Long.toString(carried.made().atStartOfDay(ZoneOffset.UTC).toEpochSecond())));
    Project project = new Project(new CarriedFolder(own), templates.names());
    ProgramStamp program = ProgramStamp.ofThisProgram();
    Workshop workshop =
        new Workshop(
            project,
            templates,
            program,
            madeDate,
            new Pipeline(project, templates, program, madeDate),
            Path.of(""),
            report -> Earlier.carried(report, own, carried.numbers()),
            false);
    return workshop.making(carried.numbers().report()).then(making -> making.make(Steps.UNHEARD));
  }
}
