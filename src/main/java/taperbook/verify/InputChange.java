package taperbook.verify;

import java.util.Map;
import taperbook.session.InputFile;

/**
 * A change of the input files that can be undone separately.
 *
 * @param words description of the change, such as {@code readings.csv:9, power [kW]: "160" became
 *     "166"}
 * @param undone the current files without this change
 */
public record InputChange(String words, Map<String, InputFile> undone) {
  public InputChange {
    undone = Map.copyOf(undone);
  }
}
