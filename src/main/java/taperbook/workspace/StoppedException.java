package taperbook.workspace;

import java.nio.file.Files;
import java.nio.file.Path;

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
        path
            + " is "
            + (Files.isSymbolicLink(path) ? "a link" : "not what belongs there")
            + ", and was neither followed nor changed. Remove it, then run again.");
  }

  /** A folder that the program reads or writes is outside the project. */
  public static StoppedException outsideProject(Path folder) {
    return new StoppedException(
        folder
            + " is a link that leads out of the project folder, and was not followed. Put the folder"
            + " itself there, or name with --folder the one that holds it.");
  }

  @Override
  public String getMessage() {
    return String.valueOf(super.getMessage());
  }
}
