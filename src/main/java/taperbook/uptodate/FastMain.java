package taperbook.uptodate;

import java.nio.file.Path;

/** The entry point that the launcher tries first; it depends only on {@link UpToDateCheck}. */
public final class FastMain {
  /** The status that makes the launcher start the whole program. */
  private static final int NOT_KNOWN = 75;

  private FastMain() {}

  /** Ends with 0 after printing a message if reports are up to date; otherwise prints nothing. */
  public static void main(String[] arguments) {
    Path program = Path.of(System.getProperty("java.class.path", ""));
    String date = System.getenv("SOURCE_DATE_EPOCH");
    if (!UpToDateCheck.nothingToDo(arguments, program, date == null ? "" : date, System.out)) {
      System.exit(NOT_KNOWN);
    }
    System.out.flush();
  }
}
