package taperbook.result;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import taperbook.session.InputFile;

/**
 * A changed definition of a method requires a new version. {@code methods.csv} keeps each version
 * with the hash of its definition. After a change of wording only, replace the hash there; after a
 * change of the numbers, also increase the version. The failure message has the expected line.
 */
final class MethodVersionTest {
  private static final Path KEPT = Path.of("src/test/resources/methods.csv");

  @Test
  void each_definition_is_known_under_its_version() throws IOException {
    List<String> lines = Files.readAllLines(KEPT, StandardCharsets.UTF_8);
    assertThat(lines.get(0)).isEqualTo("method,version,definition_sha256");
    Map<String, String> now = new LinkedHashMap<>();
    for (Method method : Method.values()) {
      now.put(method.id(), method.id() + "," + method.version() + "," + hash(method));
    }
    assertThat(lines.subList(1, lines.size())).containsExactlyElementsOf(now.values());
  }

  private static String hash(Method method) {
    String text = method.definition() + "\n" + method.formula() + "\n" + method.assumptions();
    return new InputFile("definition", text.getBytes(StandardCharsets.UTF_8))
        .sha256()
        .substring(0, 16);
  }
}
