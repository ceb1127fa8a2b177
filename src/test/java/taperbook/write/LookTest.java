package taperbook.write;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

final class LookTest {
  @Test
  void writes() throws IOException {
    var checked = new ReportWriter().write(InventedReport.job());
    checked.problems().forEach(p -> System.out.println(p.sentence()));
    for (Map.Entry<String, byte[]> e : checked.value().orElseThrow().all().entrySet()) {
      Path path = Path.of("target/look/" + e.getKey());
      Files.createDirectories(path.getParent());
      Files.write(path, e.getValue());
    }
  }
}
