package taperbook.app.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import taperbook.app.line.Request;
import taperbook.app.making.Pipeline;
import taperbook.app.making.Workshop;
import taperbook.app.process.ExitStatus;
import taperbook.app.process.Messages;
import taperbook.app.process.Steps;
import taperbook.app.project.OwnTemplates;
import taperbook.app.project.Project;
import taperbook.app.project.StoppedException;
import taperbook.app.publish.Earlier;
import taperbook.app.stamp.MadeDate;
import taperbook.app.stamp.ProgramStamp;
import taperbook.model.InputFile;
import taperbook.problem.Checked;
import taperbook.proof.CarriedReport;
import taperbook.proof.Comparison;
import taperbook.proof.Difference;
import taperbook.proof.ReportPdfReader;
import taperbook.read.CarriedFolder;
import taperbook.write.pdf.QuietLibraries;

/** Recomputes a report from the inputs that its PDF carries, and holds the two together. */
public final class VerifyCommand {
  private static final String TEMPLATES = "templates/";

  private final Messages messages;

  public VerifyCommand(Messages messages) {
    this.messages = messages;
  }

  public ExitStatus run(Request request) {
    if (request.names().size() != 1) {
      messages.stopped("verify needs the name of one PDF, as in: taperbook verify report.pdf");
      return ExitStatus.WRONG_USAGE;
    }
    QuietLibraries.hush();
    String name = request.names().get(0);
    byte[] pdf = bytes(name);
    Checked<CarriedReport> carried = ReportPdfReader.read(name, pdf);
    messages.problems(carried.problems());
    if (carried.value().isEmpty()) {
      return ExitStatus.INPUT_REFUSED;
    }
    return verify(name, pdf, carried.value().get());
  }

  private ExitStatus verify(String name, byte[] pdf, CarriedReport carried) {
    messages.result(name + "  made by " + carried.program() + " from " + inputs(carried));
    Checked<byte[]> made = remake(carried);
    messages.problems(made.problems());
    Optional<CarriedReport> recomputed =
        made.value().flatMap(bytes -> ReportPdfReader.read(name, bytes).value());
    if (recomputed.isEmpty()) {
      Comparison.inputs(carried).forEach(this::tell);
      return notVerified(carried, "the report cannot be made again from what the PDF carries");
    }
    List<Difference> differences = Comparison.of(carried, recomputed.get());
    for (Difference.Kind kind : Difference.Kind.values()) {
      count(kind, carried, differences);
      differences.stream().filter(d -> d.kind() == kind).forEach(this::tell);
    }
    if (!differences.isEmpty()) {
      return notVerified(carried, "the report does not follow from the inputs it carries");
    }
    boolean same = Arrays.equals(pdf, made.value().orElseThrow());
    messages.result(
        "verified: the report follows from the inputs it carries"
            + (same ? ", byte for byte." : "; the files differ only in how they are packed."));
    return ExitStatus.DONE;
  }

  private ExitStatus notVerified(CarriedReport carried, String why) {
    String own = ProgramStamp.ofThisProgram().name();
    messages.result("not verified: " + why + ".");
    if (!own.equals(carried.program())) {
      messages.result(
          "It was made by "
              + carried.program()
              + " and this is "
              + own
              + ": verify it with that program to tell a change of program from a change of data.");
    }
    return ExitStatus.INPUT_REFUSED;
  }

  private void count(Difference.Kind kind, CarriedReport carried, List<Difference> differences) {
    long differing = differences.stream().filter(d -> d.kind() == kind).count();
    String what =
        switch (kind) {
          case INPUT -> Messages.count(carried.numbers().hashes().size(), "input") + " by hash";
          case NUMBER -> Messages.count(carried.numbers().numbers().size(), "number");
          case TEXT -> "text of " + Messages.count(carried.pages().size(), "page");
          case DRAWING -> "drawing of " + Messages.count(carried.pages().size(), "page");
          case REST -> "outline, structure, metadata and attachments";
        };
    messages.result("  " + what + ": " + (differing == 0 ? "the same" : differing + " differing"));
  }

  private void tell(Difference difference) {
    messages.result("    " + difference.place());
    messages.result("      carried     " + difference.carried());
    messages.result("      recomputed  " + difference.recomputed());
  }

  /** The PDF that the carried files give, made in memory. */
  private static Checked<byte[]> remake(CarriedReport carried) {
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
    Pipeline pipeline = new Pipeline(project, templates, program, madeDate);
    return new Workshop(
            project,
            templates,
            program,
            madeDate,
            pipeline,
            Path.of(""),
            r -> Earlier.carried(r, own, carried.numbers()),
            false)
        .making(carried.numbers().report())
        .then(making -> making.make(Steps.UNHEARD))
        .then(made -> Checked.good(made.files().all().getOrDefault("report.pdf", new byte[0])));
  }

  private static byte[] bytes(String name) {
    try {
      Path path = Path.of(name);
      if (Files.isRegularFile(path) && Files.size(path) > ReportPdfReader.LARGEST_PDF_BYTES) {
        throw new StoppedException(
            name + " is larger than " + ReportPdfReader.LARGEST_PDF_BYTES + " bytes");
      }
      return Files.readAllBytes(path);
    } catch (IOException | InvalidPathException e) {
      throw new StoppedException("there is no file '" + name + "' that can be read", e);
    }
  }

  private static String inputs(CarriedReport carried) {
    return Messages.count(carried.numbers().hashes().size(), "file");
  }
}
