package taperbook.uptodate;

import java.nio.file.Path;

/** The entrance that the launcher tries first; it knows no more than {@link UpToDateCheck}. */
public final class FastMain {
  /** The status that sends the launcher to the whole program. */
  private static final int NOT_KNOWN = 75;

  private FastMain() {}

  /** Ends with 0 if there was nothing to do, after saying so; otherwise nothing was said. */
  public static void main(String[] arguments) {
    Path program = Path.of(System.getProperty("java.class.path", ""));
    String date = System.getenv("SOURCE_DATE_EPOCH");
    if (!UpToDateCheck.nothingToDo(arguments, program, date == null ? "" : date, System.out)) {
      System.exit(NOT_KNOWN);
    }
    System.out.flush();
  }
}
