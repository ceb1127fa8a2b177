package taperbook.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * A parsed command line.
 *
 * @param command the command
 * @param names the operands
 * @param folder the folder that contains sessions/ and reports/
 * @param options the other options with their values
 */
public record Request(
    Command command, List<String> names, Path folder, Map<Option, String> options) {
  public Request {
    names = List.copyOf(names);
    options = Map.copyOf(options);
  }
}
