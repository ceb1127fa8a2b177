package taperbook.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * A command line, understood.
 *
 * @param command the command
 * @param names what follows its word
 * @param folder the folder that holds sessions/ and reports/
 * @param options the other options that were given, with their values
 */
public record Request(
    Command command, List<String> names, Path folder, Map<Option, String> options) {
  public Request {
    names = List.copyOf(names);
    options = Map.copyOf(options);
  }
}
