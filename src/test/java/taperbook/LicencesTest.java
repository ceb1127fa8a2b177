package taperbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Compares the shipped libraries and fonts with {@code META-INF/NOTICE}. */
final class LicencesTest {
  private static final Path OWN = Path.of("target/classes/META-INF");
  private static final Path ADDED = Path.of("src/main/licences");
  private static final Path FONTS = Path.of("src/main/resources/taperbook/fonts");

  /** A line of the dependency list: group, artifact, type, version, scope. */
  private static final Pattern SHIPPED =
      Pattern.compile("\\s+([^:]+:([^:]+)):jar:([^:]+):\\w+\\b.*");

  /** A row of the notice: subject and SPDX expression. */
  private static final Pattern STATED =
      Pattern.compile("(\\S+[:/]\\S+)\\s{2,}([A-Za-z0-9.-]+(?: AND [A-Za-z0-9.-]+)*)");

  @Test
  void each_shipped_library_states_its_licence() throws IOException {
    Map<String, String> stated = stated();
    stated.keySet().removeIf(what -> what.contains("/"));
    assertThat(stated.keySet()).containsExactlyInAnyOrderElementsOf(shipped().keySet());
  }

  @Test
  void each_shipped_library_includes_its_licence_text() throws IOException {
    Map<String, String> stated = stated();
    for (Map.Entry<String, String> library : shipped().entrySet()) {
      String name = library.getKey();
      Path added = ADDED.resolve(name.substring(0, name.indexOf(':'))).resolve("LICENSE");
      boolean ours = "Apache-2.0".equals(stated.get(name));
      assertThat(ours || Files.exists(added) || hasText(library.getValue())).as(name).isTrue();
    }
  }

  @Test
  void each_font_states_its_licence() throws IOException {
    try (Stream<Path> all = Files.list(FONTS)) {
      List<String> fonts =
          all.map(font -> "taperbook/fonts/" + FONTS.relativize(font))
              .filter(font -> !font.endsWith(".txt"))
              .toList();
      Map<String, String> stated = stated();
      stated.values().removeIf(licence -> !licence.equals("OFL-1.1"));
      assertThat(stated.keySet()).containsExactlyInAnyOrderElementsOf(fonts);
    }
  }

  @Test
  void the_jar_includes_the_licence_that_the_pom_states() throws IOException {
    assertThat(Files.readString(Path.of("pom.xml"))).contains("<name>Apache-2.0</name>");
    assertThat(Files.readString(OWN.resolve("LICENSE")))
        .contains("Apache License", "Version 2.0, January 2004", "END OF TERMS AND CONDITIONS");
  }

  private static Map<String, String> stated() throws IOException {
    Map<String, String> stated = new TreeMap<>();
    for (String line : Files.readAllLines(OWN.resolve("NOTICE"))) {
      Matcher row = STATED.matcher(line);
      if (row.matches()) {
        stated.put(row.group(1), row.group(2));
      }
    }
    return stated;
  }

  /** The shipped libraries with the names of their jars. */
  private static Map<String, String> shipped() throws IOException {
    Map<String, String> shipped = new TreeMap<>();
    for (String line : Files.readAllLines(Path.of("target/shipped.txt"))) {
      Matcher library = SHIPPED.matcher(line);
      if (library.matches()) {
        shipped.put(library.group(1), library.group(2) + "-" + library.group(3) + ".jar");
      }
    }
    assertThat(shipped).isNotEmpty();
    return shipped;
  }

  private static boolean hasText(String jar) throws IOException {
    String place =
        Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
            .filter(entry -> entry.endsWith(File.separator + jar))
            .findFirst()
            .orElseThrow();
    try (JarFile file = new JarFile(place)) {
      return file.stream().anyMatch(entry -> entry.getName().matches(".*/[\\w-]*LICENSE[^/]*"));
    }
  }
}
