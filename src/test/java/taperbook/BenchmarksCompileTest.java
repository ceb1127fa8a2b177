package taperbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The build does not compile the benchmarks, so that only this test keeps them in step with the
 * program.
 */
@Tag("slow")
class BenchmarksCompileTest {
  @TempDir Path classes;

  @Test
  void every_source_of_the_benchmarks_compiles() throws IOException {
    List<Path> sources;
    try (Stream<Path> files = Files.walk(Path.of("src", "bench"))) {
      sources = files.filter(f -> f.toString().endsWith(".java")).toList();
    }
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    StringWriter diagnostics = new StringWriter();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
      List<String> options = List.of("-proc:none", "-d", classes.toString());
      boolean compiled =
          compiler
              .getTask(
                  diagnostics,
                  files,
                  null,
                  options,
                  null,
                  files.getJavaFileObjectsFromPaths(sources))
              .call();

      assertThat(compiled).as(diagnostics.toString()).isTrue();
      assertThat(sources).isNotEmpty();
    }
  }
}
