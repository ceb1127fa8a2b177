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
import taperbook.cli.ExitStatus;
import taperbook.cli.Messages;
import taperbook.cli.Option;
import taperbook.cli.Request;
import taperbook.diagnostics.BoundedTask;
import taperbook.diagnostics.Checked;
import taperbook.i18n.Texts;
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
  private static final long STACK_BYTES = 16L << 20;

  private final Messages messages;

  public VerifyCommand(Messages messages) {
    this.messages = messages;
  }

  public ExitStatus run(Request request) {
    if (request.names().size() != 1) {
      messages.stopped(Texts.of("command.verify_command.verify_needs_name_of_one"));
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
      return BoundedTask.within(
          seconds,
          MAX_BYTES,
          task -> new Thread(null, task, "verify", STACK_BYTES),
          () -> verify(name, out));
    } catch (BoundedTask.LimitExceeded e) {
      return notVerified(name, e.limit());
    } catch (OutOfMemoryError e) {
      return notVerified(name, BoundedTask.mebibytesOfMemory(Runtime.getRuntime().maxMemory()));
    }
  }

  private ExitStatus notVerified(String name, String limit) {
    messages.stopped(Texts.of("command.verify_command.not_verified_did_not_suffice", limit, name));
    return ExitStatus.INPUT_REFUSED;
  }

  private ExitStatus verify(String name, Optional<String> out) {
    byte[] pdf = bytes(name);
    Checked<CarriedReport> read = ReportPdfReader.read(name, pdf);
    messages.problems(read.problems());
    if (read.value().isEmpty()) {
      return ExitStatus.INPUT_REFUSED;
    }
    CarriedReport carried = read.value().get();
    messages.result(
        Texts.of("command.verify_command.made_by_from", name, program(carried), inputs(carried)));
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
            Texts.of(
                "command.verify_command.verified_report_follows_from_inputs",
                found.layout() == Layout.SAME_BYTES
                    ? Texts.of("command.verify_command.byte_for_byte")
                    : Texts.of("command.verify_command.byte_for_byte_but_for")));
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
        return notVerified(Texts.of("command.verify_command.numbers_do_not_follow_from"));
      }
      headline(pdf, made);
      objects(found);
      recomputed(found, foreign);
      return ExitStatus.INPUT_REFUSED;
    } catch (IOException e) {
      return notVerified(
          Texts.of("command.verify_command.its_pages_cannot_be_compared", e.getMessage()));
    }
  }

  private void numbers(CarriedReport carried, List<Difference> differing) {
    for (Difference.Kind kind : List.of(Difference.Kind.INPUT, Difference.Kind.NUMBER)) {
      boolean inputs = kind == Difference.Kind.INPUT;
      List<Difference> of = differing.stream().filter(d -> d.kind() == kind).toList();
      int all = inputs ? carried.numbers().hashes().size() : carried.numbers().numbers().size();
      messages.result(
          "  "
              + (inputs
                  ? Texts.count(
                      all, "command.verify_command.input", "command.verify_command.inputs")
                  : Texts.count(all, "count.number", "count.numbers"))
              + (inputs ? Texts.of("command.verify_command.by_hash") : ": ")
              + differing(of.size()));
      of.forEach(this::report);
    }
  }

  private static String differing(int count) {
    return count == 0
        ? Texts.of("command.verify_command.none_differs")
        : Texts.count(
            count,
            "command.verify_command.number_differs",
            "command.verify_command.numbers_differ");
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
        Texts.of(
            "command.verify_command.as_text_on_pages",
            Texts.count(
                made.headline().size(),
                "command.verify_command.headline_number",
                "command.verify_command.headline_numbers"),
            missing.isEmpty()
                ? Texts.of("command.verify_command.none_is_missing")
                : Texts.of("command.verify_command.missing", missing.size())));
    missing.forEach(
        n -> messages.result("    " + n.label() + ", " + n.value() + ", " + n.intervals().get(0)));
  }

  private void objects(PdfComparison.Found found) {
    if (found.layout() != Layout.OTHER) {
      return;
    }
    messages.result(
        Texts.of(
            "command.verify_command.of_file",
            Texts.count(
                found.compared(),
                "command.verify_command.object",
                "command.verify_command.objects"),
            differing(found.objects().size()),
            found.whole() ? "" : Texts.of("command.verify_command.others_were_not_compared")));
    found.objects().stream().limit(MAX_REPORTED).forEach(this::report);
    if (found.objects().size() > MAX_REPORTED) {
      messages.result(
          Texts.of("command.verify_command.and_more", found.objects().size() - MAX_REPORTED));
    }
    if (!found.pages().isEmpty()) {
      messages.result(
          Texts.of(
              "command.verify_command.pages_that_differ",
              found.pages().stream().map(String::valueOf).collect(Collectors.joining(", "))));
      found.texts().stream().limit(MAX_REPORTED).forEach(this::report);
    }
  }

  private void recomputed(PdfComparison.Found found, List<String> foreign) {
    String verdict = Texts.of("command.verify_command.recomputed_not_verified_numbers_follow");
    if (!foreign.isEmpty()) {
      messages.result(
          verdict
              + Texts.count(foreign.size(), "command.common.file", "command.common.files")
              + (foreign.size() == 1
                  ? Texts.of("command.verify_command.that_is_not_this_program")
                  : Texts.of("command.verify_command.that_are_not_this_program"))
              + String.join(", ", foreign)
              + ".");
    }
    if (found.layout() == Layout.OTHER) {
      messages.result(
          (foreign.isEmpty() ? verdict : Texts.of("command.verify_command.besides"))
              + (found.objects().isEmpty()
                  ? Texts.of("command.verify_command.file_is_packed_in_another")
                  : Texts.of(
                      "command.verify_command.pages_are_laid_out_otherwise",
                      Texts.count(
                          found.objects().size(),
                          "command.verify_command.object",
                          "command.verify_command.objects"),
                      found.objects().size() == 1
                          ? Texts.of("command.verify_command.differs")
                          : Texts.of("command.verify_command.differ"))));
    }
    messages.result(Texts.of("command.verify_command.pages_that_follow_from_inputs"));
  }

  private ExitStatus notRebuilt(CarriedReport carried) {
    NumbersComparison.inputs(carried).forEach(this::report);
    return notVerified(Texts.of("command.verify_command.report_cannot_be_made_again"));
  }

  private ExitStatus notVerified(String why) {
    messages.result(Texts.of("command.verify_command.not_verified", why));
    return ExitStatus.INPUT_REFUSED;
  }

  private void report(Difference difference) {
    messages.result("    " + shortened(difference.place()));
    messages.result(Texts.of("command.verify_command.carried", shortened(difference.carried())));
    messages.result(
        Texts.of("command.verify_command.recomputed", shortened(difference.recomputed())));
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
        throw new StoppedException(Texts.of("command.verify_command.there_is_no_file", name));
      }
      if (!Files.isRegularFile(path)) {
        throw new StoppedException(Texts.of("command.verify_command.is_not_regular_file", name));
      }
      if (Files.size(path) > ReportPdfReader.LARGEST_PDF_BYTES) {
        throw new StoppedException(
            Texts.of(
                "command.verify_command.is_larger_than_bytes",
                name,
                ReportPdfReader.LARGEST_PDF_BYTES));
      }
      return RegularFile.bytes(path.toRealPath(), ReportPdfReader.LARGEST_PDF_BYTES);
    } catch (IOException | InvalidPathException e) {
      throw new StoppedException(Texts.of("command.verify_command.file_cannot_be_read", name), e);
    }
  }

  private static void write(String name, byte[] pdf) {
    try (OutputStream out = RegularFile.create(Path.of(name))) {
      out.write(pdf);
    } catch (FileAlreadyExistsException e) {
      throw new StoppedException(
          Texts.of("command.verify_command.there_is_file_already_name", name), e);
    } catch (IOException | InvalidPathException e) {
      throw new StoppedException(
          Texts.of("command.verify_command.file_cannot_be_written", name), e);
    }
  }

  private static String program(CarriedReport carried) {
    String own = BuildInfo.ofThisProgram().name();
    return shortened(carried.program())
        + (own.equals(carried.program()) ? "" : Texts.of("command.verify_command.this_is", own));
  }

  private static String inputs(CarriedReport carried) {
    return Texts.count(
        carried.numbers().hashes().size(), "command.common.file", "command.common.files");
  }
}
