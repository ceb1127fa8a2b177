package taperbook.output.pdf;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.TemplateModelException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import taperbook.diagnostics.Checked;
import taperbook.output.article.RestrictedTemplates;
import taperbook.plan.Paper;

/** Lays a recording sheet out as PDF/A-3a and PDF/UA-1. */
public final class SheetWriter {
  private static final String TEMPLATE = "sheet.ftlh";
  private static final String STYLE = "sheet.css";

  private final Map<String, String> templates;
  private final String program;
  private final LocalDate date;

  /**
   * Creates a writer.
   *
   * @param templates texts of the sheet's template and style by file name
   * @param program name and version of this program
   * @param date date of the PDF
   */
  public SheetWriter(Map<String, String> templates, String program, LocalDate date) {
    this.templates = Map.copyOf(templates);
    this.program = program;
    this.date = date;
  }

  /** Returns the sheet as a PDF, or every problem in its template. */
  public Checked<byte[]> pdf(RecordingSheet sheet, Paper paper) {
    PdfMetadata heading = new PdfMetadata(sheet.title(), "", sheet.purpose(), program, date);
    return new RestrictedTemplates(templates)
        .page(TEMPLATE, model(sheet, paper))
        .then(html -> new PdfPage(List.of(), TEMPLATE, false).bytes(html, heading, List::of));
  }

  private Map<String, Object> model(RecordingSheet sheet, Paper paper) {
    Map<String, Object> model = new LinkedHashMap<>();
    model.put("css", markup(templates.getOrDefault(STYLE, "")));
    model.put("paper", paper.size());
    model.put("title", sheet.title());
    model.put("purpose", sheet.purpose());
    model.put("cautions", sheet.cautions());
    model.put("before", stage(sheet.before()));
    model.put("during", sheet.during());
    model.put(
        "table",
        Map.of(
            "heading",
            sheet.table().heading(),
            "hint",
            sheet.table().hint(),
            "columns",
            sheet.table().columns().stream()
                .map(h -> Map.of("name", h.name(), "unit", h.unit()))
                .toList(),
            "marks",
            sheet.table().marks()));
    model.put("after", stage(sheet.after()));
    model.put("program", program);
    return model;
  }

  private static Map<String, Object> stage(RecordingSheet.Stage stage) {
    return Map.of(
        "heading",
        stage.heading(),
        "checks",
        stage.checks(),
        "fields",
        stage.fields().stream().map(SheetWriter::field).toList());
  }

  private static Map<String, Object> field(RecordingSheet.Field field) {
    return Map.of(
        "label", field.label(),
        "explanation", field.explanation(),
        "unit", field.unit(),
        "choices", field.choices(),
        "required", field.required(),
        "amount", field.amount());
  }

  private static Object markup(String css) {
    try {
      return HTMLOutputFormat.INSTANCE.fromMarkup(css);
    } catch (TemplateModelException e) {
      throw new IllegalStateException("markup is taken as it is", e);
    }
  }
}
