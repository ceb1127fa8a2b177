package taperbook.endtoend;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import taperbook.diagnostics.Problem;
import taperbook.input.mapping.ColumnMapProposal;
import taperbook.output.article.ArticlePart;
import taperbook.output.article.ArticleText;
import taperbook.output.article.RestrictedTemplates;
import taperbook.output.pdf.PdfPage;
import taperbook.prosecheck.FigureCheck;
import taperbook.result.ReportResult;
import taperbook.session.InputFile;
import taperbook.verify.CarriedReport;
import taperbook.verify.NumberMoves;
import taperbook.verify.NumbersComparison;
import taperbook.verify.NumbersFile;
import taperbook.verify.ReportPdfReader;
import taperbook.workspace.StoppedException;

/**
 * Entry points for untrusted bytes. Each accepts any bytes and terminates; invalid bytes must end
 * in problems or in {@link StoppedException}.
 */
enum FuzzTarget {
  READINGS("sessions/stop/readings.csv") {
    @Override
    void take(byte[] data) {
      FuzzProject project = FuzzProject.with(file, data);
      List<Problem> problems = project.files().session("stop").problems();
      project.files().proposals(problems);
    }
  },
  /** Parses and, if valid, measures. */
  MEASURED("sessions/stop/readings.csv") {
    @Override
    void take(byte[] data) {
      FuzzProject.with(file, data).measured();
    }
  },
  CONDITIONS("sessions/stop/conditions.csv") {
    @Override
    void take(byte[] data) {
      FuzzProject.with(file, data).files().session("stop");
    }
  },
  RANGE_TEST("sessions/drive/range-test.csv") {
    @Override
    void take(byte[] data) {
      FuzzProject.with(file, data).files().rangeTest("drive");
    }
  },
  LEGS("sessions/drive/legs.csv") {
    @Override
    void take(byte[] data) {
      FuzzProject.with(file, data).files().rangeTest("drive");
    }
  },
  COLUMNS("sessions/stop/columns.csv") {
    @Override
    void take(byte[] data) {
      FuzzProject project = FuzzProject.with(file, data);
      project.and("sessions/stop/log.csv", bytes(FuzzProject.LOG)).files().session("stop");
    }
  },
  /** Readings of another program, for which a map is proposed. */
  FOREIGN("sessions/stop/readings.csv") {
    @Override
    void take(byte[] data) {
      Optional<ColumnMapProposal> proposal = ColumnMapProposal.of(new InputFile(file, data));
      if (proposal.isPresent()) {
        String map = String.join("\n", proposal.get().lines()) + "\n";
        FuzzProject.with(file, data).and(COLUMNS.file, bytes(map)).files().session("stop");
      }
    }
  },
  FRONT_MATTER("reports/look.md") {
    @Override
    void take(byte[] data) {
      FuzzProject.with(file, data).files().plan("look");
    }
  },
  /** The article only, after a valid front matter. */
  ARTICLE("article.md") {
    @Override
    void take(byte[] data) {
      ReportResult result = FuzzProject.measuredWith(text(data));
      FigureCheck.of(result);
      new ArticleText(result, Set.of("power-over-soc")).parts();
    }
  },
  /** The article rendered to a PDF. */
  PRINTED("article.md") {
    @Override
    void take(byte[] data) {
      ReportResult result = FuzzProject.measuredWith(text(data));
      Optional<List<ArticlePart>> parts = new ArticleText(result, Set.of()).parts().value();
      if (parts.isPresent()) {
        String html = String.join("", parts.get().stream().map(ArticlePart::html).toList());
        new PdfPage(List.of(), "fuzz.ftlh", false)
            .bytes(FuzzProject.page(html), FuzzProject.heading(), List::of);
      }
    }
  },
  /** A template of the user. */
  TEMPLATE("template.ftlh") {
    @Override
    void take(byte[] data) {
      RestrictedTemplates templates = new RestrictedTemplates(Map.of("x.ftlh", text(data)));
      templates.page("x.ftlh", FuzzProject.SMALL_MODEL);
    }
  },
  NUMBERS("numbers.json") {
    @Override
    void take(byte[] data) {
      Optional<NumbersFile> read = NumbersFile.read(CarriedReport.NUMBERS, data).value();
      if (read.isPresent()) {
        CarriedReport published = FuzzProject.published();
        NumberMoves.between(published.numbers(), read.get());
        NumberMoves.stated(read.get(), published.numbers());
        NumbersComparison.of(FuzzProject.with(published, read.get()), published);
      }
    }
  },
  PDF("report.pdf") {
    @Override
    void take(byte[] data) {
      Optional<CarriedReport> read = ReportPdfReader.read(file, data).value();
      read.ifPresent(carried -> NumbersComparison.of(carried, FuzzProject.published()));
    }
  };

  /** The file that the bytes replace. */
  final String file;

  FuzzTarget(String file) {
    this.file = file;
  }

  /** Processes any bytes; throws no exception but {@link StoppedException}. */
  abstract void take(byte[] data);

  /** The target of a folder name such as {@code front-matter}. */
  static FuzzTarget of(String word) {
    return Arrays.stream(values()).filter(t -> t.word().equals(word)).findFirst().orElseThrow();
  }

  String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static String text(byte[] data) {
    return new String(data, StandardCharsets.UTF_8);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
