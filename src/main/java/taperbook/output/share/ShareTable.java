package taperbook.output.share;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import taperbook.i18n.Texts;
import taperbook.output.data.CsvWriter;
import taperbook.output.view.NumberTable;
import taperbook.output.view.PageModel;

/**
 * The table by state of charge to embed elsewhere: {@code share/table.html}, a fragment without
 * styles, and {@code share/table.csv}. Both have the cells of the page.
 */
public final class ShareTable {
  private static final String PERCENT = "\u00a0%";

  private final PageModel.Report report;
  private final NumberTable<NumberTable.RowView> table;

  /**
   * Creates the table of a report.
   *
   * @param page the model of its page
   */
  public ShareTable(PageModel page) {
    this.report = page.report();
    this.table = page.milestones();
  }

  /** Returns true if no requested state of charge was reached. */
  public boolean isEmpty() {
    return table.rows().isEmpty();
  }

  /** Returns the table as an HTML element in UTF-8: value, and its interval in brackets. */
  public byte[] html() {
    Element root = new Document("").appendElement("table");
    root.appendElement("caption").text(Texts.of("share.caption", report.title(), report.zero()));
    Element head = root.appendElement("thead").appendElement("tr");
    head.appendElement("th").attr("scope", "col").text(table.first());
    table.heads().forEach(h -> head.appendElement("th").attr("scope", "col").text(head(h, "")));
    Element body = root.appendElement("tbody");
    for (NumberTable.RowView row : table.rows()) {
      Element line = body.appendElement("tr");
      line.appendElement("th").attr("scope", "row").text(row.head().label());
      row.cells().forEach(cell -> line.appendElement("td").text(cell(cell)));
    }
    return (root.outerHtml() + "\n").getBytes(StandardCharsets.UTF_8);
  }

  private static String cell(NumberTable.Cell cell) {
    if (!cell.number().measured()) {
      return cell.number().present() ? "withheld" : "\u2013";
    }
    String ends = cell.shown().ends();
    return cell.shown().shown() + (ends.isEmpty() ? "" : " (" + ends + ")");
  }

  /** Returns the table as CSV in UTF-8: value and both ends of its interval in separate columns. */
  public byte[] csv() {
    CsvWriter csv = new CsvWriter().row(columns().stream().map(CsvWriter::escapeFormula).toList());
    cells().forEach(csv::row);
    return csv.text().getBytes(StandardCharsets.UTF_8);
  }

  /** Returns the headings of the columns of the CSV file, each with its unit. */
  public List<String> columns() {
    List<String> columns = new ArrayList<>(List.of(table.first() + " (%)"));
    for (NumberTable.Head head : table.heads()) {
      columns.add(head(head, ""));
      columns.add(head(head, "share.low"));
      columns.add(head(head, "share.high"));
    }
    return columns;
  }

  /** Returns the cells of the CSV file, row by row; empty where the page has no value. */
  public List<List<String>> cells() {
    List<List<String>> all = new ArrayList<>();
    for (NumberTable.RowView row : table.rows()) {
      List<String> line = new ArrayList<>(List.of(row.head().label().replace(PERCENT, "")));
      for (NumberTable.Cell cell : row.cells()) {
        line.add(plain(cell.shown().shown()));
        line.add(plain(cell.shown().low()));
        line.add(plain(cell.shown().high()));
      }
      all.add(line);
    }
    return all;
  }

  /** Replaces the typographic minus with an ASCII one. */
  private static String plain(String amount) {
    return amount.replace('\u2212', '-');
  }

  /**
   * Returns the heading of a column with its unit, or the table's unit if all columns share one.
   */
  private String head(NumberTable.Head head, String end) {
    String whole = end.isEmpty() ? head.label() : Texts.of(end, head.label());
    String unit = table.unit().isEmpty() ? head.unit() : table.unit();
    return unit.isEmpty() ? whole : whole + " (" + unit + ")";
  }
}
