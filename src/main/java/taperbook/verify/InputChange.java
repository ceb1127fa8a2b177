package taperbook.verify;

import java.util.Map;
import taperbook.session.InputFile;

/**
 * A change of the input files that can be undone by itself.
 *
 * @param words the change in words, such as {@code readings.csv:9, power [kW]: "160" became "166"}
 * @param undone the files as they are now, but for this change
 */
public record InputChange(String words, Map<String, InputFile> undone) {
  /** Copies the map. */
  public InputChange {
    undone = Map.copyOf(undone);
  }
}
