package taperbook.output.pdf;

import java.util.List;

/**
 * A recording sheet in words: what is looked after and written down before, during and after.
 *
 * @param title what the sheet is called
 * @param purpose what it is for, in a sentence
 * @param cautions what comes before any measurement
 * @param before what to see to and to write down before
 * @param during what to see to while it goes on
 * @param table what to write down while it goes on
 * @param after what to see to and to write down after
 */
public record RecordingSheet(
    String title,
    String purpose,
    List<String> cautions,
    Stage before,
    List<String> during,
    Table table,
    Stage after) {
  /** Copies the lists. */
  public RecordingSheet {
    cautions = List.copyOf(cautions);
    during = List.copyOf(during);
  }

  /**
   * A time of the work.
   *
   * @param heading its heading
   * @param checks what to see to
   * @param fields what to write down
   */
  public record Stage(String heading, List<String> checks, List<Field> fields) {
    /** Copies the lists. */
    public Stage {
      checks = List.copyOf(checks);
      fields = List.copyOf(fields);
    }
  }

  /**
   * A place to write something.
   *
   * @param label what, in a word or two
   * @param explanation what, in a sentence
   * @param unit its unit; may be empty
   * @param choices words to mark one of; empty if the value is written
   * @param required true if a report needs it, even if only as unknown
   * @param amount true if how it is known should be marked as well
   */
  public record Field(
      String label,
      String explanation,
      String unit,
      List<String> choices,
      boolean required,
      boolean amount) {
    /** Copies the choices. */
    public Field {
      choices = List.copyOf(choices);
    }
  }

  /**
   * A table to write readings into.
   *
   * @param heading its heading
   * @param hint how to use it, in a sentence
   * @param columns heads of its columns; the first holds the marks, the last is the widest
   * @param marks the text of each row's first cell; may be empty
   */
  public record Table(String heading, String hint, List<Head> columns, List<String> marks) {
    /** Copies the lists. */
    public Table {
      columns = List.copyOf(columns);
      marks = List.copyOf(marks);
    }
  }

  /**
   * The head of a column.
   *
   * @param name what goes into the column
   * @param unit its unit; may be empty
   */
  public record Head(String name, String unit) {}
}
