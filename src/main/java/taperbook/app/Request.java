package taperbook.app;

import java.nio.file.Path;
import java.util.List;

/**
 * A command line, understood.
 *
 * @param command the command's word
 * @param names what follows it
 * @param folder the folder that holds sessions/ and reports/
 */
record Request(String command, List<String> names, Path folder) {
  Request {
    names = List.copyOf(names);
  }
}
