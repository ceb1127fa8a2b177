package taperbook.app.project;

/**
 * Something outside the input stands in the way, such as a folder that cannot be written, or a name
 * that nothing has.
 */
public final class StoppedException extends RuntimeException {
  private static final long serialVersionUID = 1;

  public StoppedException(String message) {
    super(message);
  }

  public StoppedException(String message, Throwable cause) {
    super(message, cause);
  }

  @Override
  public String getMessage() {
    return String.valueOf(super.getMessage());
  }
}
