package taperbook.cli;

/** Exit statuses of a command. */
public enum ExitStatus {
  DONE(0, "done"),
  INPUT_REFUSED(1, "input refused or PDF not verified; every reason was printed"),
  WRONG_USAGE(2, "wrong usage; nothing was done"),
  OUR_FAULT(3, "a fault of the program");

  private final int code;
  private final String meaning;

  ExitStatus(int code, String meaning) {
    this.code = code;
    this.meaning = meaning;
  }

  /** Returns the exit status of the process. */
  public int code() {
    return code;
  }

  /** Returns a short description. */
  public String meaning() {
    return meaning;
  }
}
