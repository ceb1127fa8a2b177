package taperbook.output.pdf;

import java.util.List;

/**
 * The content of a recording sheet: checks and records before, during and after a measurement.
 *
 * @param title title of the sheet
 * @param purpose its purpose, in a sentence
 * @param cautions cautions to read before any measurement
 * @param before checks and fields before the measurement
 * @param during checks during the measurement
 * @param table table of readings during the measurement
 * @param after checks and fields after the measurement
 */
public record RecordingSheet(
    String title,
    String purpose,
    List<String> cautions,
    Stage before,
    List<String> during,
    Table table,
    Stage after) {
  public RecordingSheet {
    cautions = List.copyOf(cautions);
    during = List.copyOf(during);
  }

  /**
   * A stage of the measurement.
   *
   * @param heading its heading
   * @param checks checks to make
   * @param fields values to record
   */
  public record Stage(String heading, List<String> checks, List<Field> fields) {
    public Stage {
      checks = List.copyOf(checks);
      fields = List.copyOf(fields);
    }
  }

  /**
   * A field to fill in.
   *
   * @param label its label, in a word or two
   * @param explanation its meaning, in a sentence
   * @param unit its unit; may be empty
   * @param choices choices to mark one of; empty if the value is written
   * @param required true if a report requires it, even if as unknown
   * @param amount true if the way it was measured should be marked too
   */
  public record Field(
      String label,
      String explanation,
      String unit,
      List<String> choices,
      boolean required,
      boolean amount) {
    public Field {
      choices = List.copyOf(choices);
    }
  }

  /**
   * A table to write readings into.
   *
   * @param heading its heading
   * @param hint how to use it, in a sentence
   * @param columns headings of its columns; the first contains the marks, the last is the widest
   * @param marks the text of each row's first cell; may be empty
   */
  public record Table(String heading, String hint, List<Head> columns, List<String> marks) {
    public Table {
      columns = List.copyOf(columns);
      marks = List.copyOf(marks);
    }
  }

  /**
   * The heading of a column.
   *
   * @param name content of the column
   * @param unit its unit; may be empty
   */
  public record Head(String name, String unit) {}
}
