package taperbook.cli;

import taperbook.i18n.Texts;

/** Exit statuses of a command. */
public enum ExitStatus {
  DONE(0),
  INPUT_REFUSED(1),
  WRONG_USAGE(2),
  OUR_FAULT(3);

  private final int code;

  ExitStatus(int code) {
    this.code = code;
  }

  /** Returns the exit status of the process. */
  public int code() {
    return code;
  }

  /** Returns a short description. */
  public String meaning() {
    return Texts.ofConstant("exit", this, "meaning");
  }
}
