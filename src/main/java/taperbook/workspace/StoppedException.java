package taperbook.workspace;

import java.nio.file.Files;
import java.nio.file.Path;
import taperbook.i18n.Texts;

/**
 * Signals an obstacle other than invalid input, such as a folder that cannot be written or an
 * unknown name.
 */
public final class StoppedException extends RuntimeException {
  private static final long serialVersionUID = 1;

  public StoppedException(String message) {
    super(message);
  }

  public StoppedException(String message, Throwable cause) {
    super(message, cause);
  }

  /** Another object has the name of a file or folder that is reserved for the program. */
  public static StoppedException reservedPath(Path path) {
    return new StoppedException(
        Texts.of(
            "project.stopped_exception.is_and_was_neither_followed",
            path,
            Files.isSymbolicLink(path)
                ? Texts.of("project.stopped_exception.link")
                : Texts.of("project.stopped_exception.not_what_belongs_there")));
  }

  /** A folder that the program reads or writes is outside the project. */
  public static StoppedException outsideProject(Path folder) {
    return new StoppedException(
        Texts.of("project.stopped_exception.is_link_that_leads_out", folder));
  }

  @Override
  public String getMessage() {
    return String.valueOf(super.getMessage());
  }
}
