package taperbook.app;

/** What a command ended with. */
public enum ExitStatus {
  /** Done. */
  DONE(0),
  /** The input was refused; every reason was printed. */
  INPUT_REFUSED(1),
  /** The command line was not understood. */
  WRONG_USAGE(2),
  /** A fault of the program's own. */
  OUR_FAULT(3);

  private final int code;

  ExitStatus(int code) {
    this.code = code;
  }

  /** The exit status of the process. */
  public int code() {
    return code;
  }
}
