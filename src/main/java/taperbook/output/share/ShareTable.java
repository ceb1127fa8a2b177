package taperbook.output.share;

import static taperbook.output.share.PageView.text;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import taperbook.format.Labels;
import taperbook.output.data.CsvWriter;

/**
 * The table by state of charge to embed elsewhere: {@code share/table.html}, a fragment without
 * styles, and {@code share/table.csv}. Both have the cells of the page.
 */
public final class ShareTable {
  private static final String PERCENT = "\u00a0%";

  private final Map<String, Object> page;
  private final Map<String, Object> table;
  private final List<Map<String, Object>> heads;
  private final List<Map<String, Object>> rows;

  /**
   * Creates the table of a report.
   *
   * @param page the model of its page
   */
  public ShareTable(Map<String, Object> page) {
    this.page = page;
    this.table = PageView.part(page, "milestones");
    this.heads = PageView.parts(table, "heads");
    this.rows = PageView.parts(table, "rows");
  }

  /** Returns true if no requested state of charge was reached. */
  public boolean isEmpty() {
    return rows.isEmpty();
  }

  /** Returns the table as an HTML element in UTF-8: value, and its interval in brackets. */
  public byte[] html() {
    Element root = new Document("").appendElement("table");
    Map<String, Object> report = PageView.part(page, "report");
    root.appendElement("caption")
        .text(Labels.of("share.caption", text(report, "title"), text(report, "zero")));
    Element head = root.appendElement("thead").appendElement("tr");
    head.appendElement("th").attr("scope", "col").text(text(table, "first"));
    heads.forEach(h -> head.appendElement("th").attr("scope", "col").text(head(h, "")));
    Element body = root.appendElement("tbody");
    for (Map<String, Object> row : rows) {
      Element line = body.appendElement("tr");
      line.appendElement("th").attr("scope", "row").text(text(row, "label"));
      PageView.parts(row, "cells").forEach(cell -> line.appendElement("td").text(cell(cell)));
    }
    return (root.outerHtml() + "\n").getBytes(StandardCharsets.UTF_8);
  }

  private static String cell(Map<String, Object> cell) {
    if (!PageView.is(cell, "measured")) {
      return PageView.is(cell, "present") ? "withheld" : "\u2013";
    }
    String ends = text(cell, "ends");
    return text(cell, "shown") + (ends.isEmpty() ? "" : " (" + ends + ")");
  }

  /** Returns the table as CSV in UTF-8: value and both ends of its interval in separate columns. */
  public byte[] csv() {
    CsvWriter csv = new CsvWriter().row(columns().stream().map(CsvWriter::escapeFormula).toList());
    cells().forEach(csv::row);
    return csv.text().getBytes(StandardCharsets.UTF_8);
  }

  /** Returns the headings of the columns of the CSV file, each with its unit. */
  public List<String> columns() {
    List<String> columns = new ArrayList<>(List.of(text(table, "first") + " (%)"));
    for (Map<String, Object> head : heads) {
      columns.add(head(head, ""));
      columns.add(head(head, "share.low"));
      columns.add(head(head, "share.high"));
    }
    return columns;
  }

  /** Returns the cells of the CSV file, row by row; empty where the page has no value. */
  public List<List<String>> cells() {
    List<List<String>> all = new ArrayList<>();
    for (Map<String, Object> row : rows) {
      List<String> line = new ArrayList<>(List.of(text(row, "label").replace(PERCENT, "")));
      for (Map<String, Object> cell : PageView.parts(row, "cells")) {
        line.add(plain(text(cell, "shown")));
        line.add(plain(text(cell, "low")));
        line.add(plain(text(cell, "high")));
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
  private String head(Map<String, Object> head, String end) {
    String label = text(head, "label");
    String whole = end.isEmpty() ? label : Labels.of(end, label);
    String unit = text(table, "unit").isEmpty() ? text(head, "unit") : text(table, "unit");
    return unit.isEmpty() ? whole : whole + " (" + unit + ")";
  }
}
