package taperbook.app;

/**
 * Something outside the input stands in the way, such as a folder that cannot be written, or a name
 * that nothing has.
 */
final class StoppedException extends RuntimeException {
  private static final long serialVersionUID = 1;

  StoppedException(String message) {
    super(message);
  }

  StoppedException(String message, Throwable cause) {
    super(message, cause);
  }

  @Override
  public String getMessage() {
    return String.valueOf(super.getMessage());
  }
}
