package taperbook.command;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import taperbook.build.ReportBuild;
import taperbook.build.ReportRebuild;
import taperbook.buildinfo.BuildInfo;
import taperbook.cli.BoundedTask;
import taperbook.cli.ExitStatus;
import taperbook.cli.Messages;
import taperbook.cli.Option;
import taperbook.cli.Request;
import taperbook.diagnostics.Checked;
import taperbook.input.folder.RegularFile;
import taperbook.output.pdf.LibraryLogging;
import taperbook.verify.CarriedReport;
import taperbook.verify.Difference;
import taperbook.verify.NumbersComparison;
import taperbook.verify.PdfComparison;
import taperbook.verify.PdfComparison.Layout;
import taperbook.verify.ReportPdfReader;
import taperbook.workspace.ProjectTemplates;
import taperbook.workspace.StoppedException;

/**
 * Rebuilds a report from the inputs embedded in its PDF, and compares the two. A file is verified
 * only if it equals the rebuilt one, byte for byte or in its canonical form. For any other file the
 * numbers may follow from the inputs, but the pages that a reader displays need not.
 */
public final class VerifyCommand {
  private static final int MAX_REPORTED = 20;
  private static final int LONGEST_TOLD = 120;
  private static final int DEFAULT_SECONDS = 120;
  private static final long MAX_BYTES = 1L << 30;

  private final Messages messages;

  public VerifyCommand(Messages messages) {
    this.messages = messages;
  }

  public ExitStatus run(Request request) {
    if (request.names().size() != 1) {
      messages.stopped("verify needs the name of one PDF, as in: taperbook verify report.pdf");
      return ExitStatus.WRONG_USAGE;
    }
    LibraryLogging.silenceLoggers();
    String name = request.names().get(0);
    Optional<String> out = Optional.ofNullable(request.options().get(Option.OUT));
    int seconds =
        Optional.ofNullable(request.options().get(Option.LIMIT))
            .map(Integer::parseInt)
            .orElse(DEFAULT_SECONDS);
    try {
      return BoundedTask.within(seconds, MAX_BYTES, () -> verify(name, out));
    } catch (BoundedTask.TooMuch e) {
      messages.stopped(
          "not verified: "
              + e.words()
              + " did not suffice for '"
              + name
              + "'. More"
              + " time: verify FILE.pdf --limit SECONDS.");
      return ExitStatus.INPUT_REFUSED;
    }
  }

  private ExitStatus verify(String name, Optional<String> out) {
    byte[] pdf = bytes(name);
    Checked<CarriedReport> read = ReportPdfReader.read(name, pdf);
    messages.problems(read.problems());
    if (read.value().isEmpty()) {
      return ExitStatus.INPUT_REFUSED;
    }
    CarriedReport carried = read.value().get();
    messages.result(name + "  made by " + program(carried) + " from " + inputs(carried));
    Checked<ReportBuild.Made> made = ReportRebuild.of(carried);
    messages.problems(made.problems());
    if (made.value().isEmpty()) {
      return notRebuilt(carried);
    }
    byte[] recomputed = made.value().get().files().bytes("report.pdf");
    out.ifPresent(file -> write(file, recomputed));
    return compare(pdf, recomputed, carried, made.value().get());
  }

  private ExitStatus compare(
      byte[] pdf, byte[] recomputed, CarriedReport carried, ReportBuild.Made made) {
    List<String> foreign = ProjectTemplates.foreign(carried.files().values());
    try {
      PdfComparison.Found found = PdfComparison.of(pdf, recomputed);
      if (found.layout() != Layout.OTHER && foreign.isEmpty()) {
        messages.result(
            "verified: the report follows from the inputs it carries, "
                + (found.layout() == Layout.SAME_BYTES
                    ? "byte for byte."
                    : "byte for byte but for how its streams are deflated."));
        return ExitStatus.DONE;
      }
      // Read only at this point: for a verified file the result equals the one read before.
      Optional<CarriedReport> again = ReportPdfReader.read("report.pdf", recomputed).value();
      if (again.isEmpty()) {
        return notRebuilt(carried);
      }
      List<Difference> differing = NumbersComparison.of(carried, again.get());
      numbers(carried, differing);
      if (!differing.isEmpty()) {
        objects(found);
        return notVerified("the numbers do not follow from the inputs it carries");
      }
      headline(pdf, made);
      objects(found);
      recomputed(found, foreign);
      return ExitStatus.INPUT_REFUSED;
    } catch (IOException e) {
      return notVerified("its pages cannot be compared (" + e.getMessage() + ")");
    }
  }

  private void numbers(CarriedReport carried, List<Difference> differing) {
    for (Difference.Kind kind : List.of(Difference.Kind.INPUT, Difference.Kind.NUMBER)) {
      boolean inputs = kind == Difference.Kind.INPUT;
      List<Difference> of = differing.stream().filter(d -> d.kind() == kind).toList();
      int all = inputs ? carried.numbers().hashes().size() : carried.numbers().numbers().size();
      messages.result(
          "  "
              + Messages.count(all, inputs ? "input" : "number")
              + (inputs ? " by hash: " : ": ")
              + differing(of.size()));
      of.forEach(this::report);
    }
  }

  private static String differing(int count) {
    return count == 0 ? "none differs" : count + (count == 1 ? " differs" : " differ");
  }

  /** Checks that the most important numbers appear on the pages as text, in any layout. */
  private void headline(byte[] pdf, ReportBuild.Made made) throws IOException {
    if (made.headline().isEmpty()) {
      return;
    }
    String text = String.join(" ", ReportPdfReader.text(pdf));
    List<ReportBuild.Printed> missing =
        made.headline().stream()
            .filter(
                n ->
                    !text.contains(ReportPdfReader.plain(n.value()))
                        || n.intervals().stream()
                            .noneMatch(i -> text.contains(ReportPdfReader.plain(i))))
            .toList();
    messages.result(
        "  "
            + Messages.count(made.headline().size(), "headline number")
            + " as text on the pages: "
            + (missing.isEmpty() ? "none is missing" : missing.size() + " missing"));
    missing.forEach(
        n -> messages.result("    " + n.label() + ", " + n.value() + ", " + n.intervals().get(0)));
  }

  private void objects(PdfComparison.Found found) {
    if (found.layout() != Layout.OTHER) {
      return;
    }
    messages.result(
        "  "
            + Messages.count(found.compared(), "object")
            + " of the file: "
            + differing(found.objects().size())
            + (found.whole() ? "" : "; the others were not compared"));
    found.objects().stream().limit(MAX_REPORTED).forEach(this::report);
    if (found.objects().size() > MAX_REPORTED) {
      messages.result("    and " + (found.objects().size() - MAX_REPORTED) + " more");
    }
    if (!found.pages().isEmpty()) {
      messages.result(
          "  pages that differ: "
              + found.pages().stream().map(String::valueOf).collect(Collectors.joining(", ")));
      found.texts().stream().limit(MAX_REPORTED).forEach(this::report);
    }
  }

  private void recomputed(PdfComparison.Found found, List<String> foreign) {
    String verdict = "recomputed, not verified: the numbers follow from the inputs; ";
    if (!foreign.isEmpty()) {
      messages.result(
          verdict
              + Messages.count(foreign.size(), "file")
              + (foreign.size() == 1
                  ? " that is not this program's lays the pages out and can print anything: "
                  : " that are not this program's lay the pages out and can print anything: ")
              + String.join(", ", foreign)
              + ".");
    }
    if (found.layout() == Layout.OTHER) {
      messages.result(
          (foreign.isEmpty() ? verdict : "Besides, ")
              + (found.objects().isEmpty()
                  ? "the file is packed in another way, so that a reader may find other pages"
                      + " in it than this program does."
                  : "the pages are laid out otherwise: "
                      + Messages.count(found.objects().size(), "object")
                      + (found.objects().size() == 1 ? " differs." : " differ.")));
    }
    messages.result(
        "The pages that follow from the inputs: taperbook verify FILE.pdf --out RECOMPUTED.pdf");
  }

  private ExitStatus notRebuilt(CarriedReport carried) {
    NumbersComparison.inputs(carried).forEach(this::report);
    return notVerified("the report cannot be made again from what the PDF carries");
  }

  private ExitStatus notVerified(String why) {
    messages.result("not verified: " + why + ".");
    return ExitStatus.INPUT_REFUSED;
  }

  private void report(Difference difference) {
    messages.result("    " + shortened(difference.place()));
    messages.result("      carried     " + shortened(difference.carried()));
    messages.result("      recomputed  " + shortened(difference.recomputed()));
  }

  /**
   * Shortens external text so that it cannot fill a line of the terminal and continue on the next.
   */
  private static String shortened(String text) {
    return text.length() <= LONGEST_TOLD ? text : text.substring(0, LONGEST_TOLD) + "\u2026";
  }

  private static byte[] bytes(String name) {
    try {
      Path path = Path.of(name);
      if (!Files.exists(path)) {
        throw new StoppedException("there is no file '" + name + "'");
      }
      if (!Files.isRegularFile(path)) {
        throw new StoppedException("'" + name + "' is not a regular file");
      }
      if (Files.size(path) > ReportPdfReader.LARGEST_PDF_BYTES) {
        throw new StoppedException(
            "'" + name + "' is larger than " + ReportPdfReader.LARGEST_PDF_BYTES + " bytes");
      }
      return RegularFile.bytes(path.toRealPath(), ReportPdfReader.LARGEST_PDF_BYTES);
    } catch (IOException | InvalidPathException e) {
      throw new StoppedException("the file '" + name + "' cannot be read", e);
    }
  }

  private static void write(String name, byte[] pdf) {
    try (OutputStream out = RegularFile.create(Path.of(name))) {
      out.write(pdf);
    } catch (FileAlreadyExistsException e) {
      throw new StoppedException(
          "there is a file '" + name + "' already; name another one behind --out", e);
    } catch (IOException | InvalidPathException e) {
      throw new StoppedException("the file '" + name + "' cannot be written", e);
    }
  }

  private static String program(CarriedReport carried) {
    String own = BuildInfo.ofThisProgram().name();
    return shortened(carried.program())
        + (own.equals(carried.program()) ? "" : " (this is " + own + ")");
  }

  private static String inputs(CarriedReport carried) {
    return Messages.count(carried.numbers().hashes().size(), "file");
  }
}
