package taperbook.buildinfo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import taperbook.buildinfo.BuildInfo.JarDirectory;

/** Reads jars that the JDK writes. */
class JarDirectoryTest {
  @Test
  void starts_with_the_signature_of_the_central_directory() throws IOException {
    byte[] list = JarDirectory.list(jar("one", ""));

    // ZIP file format specification, 4.3.12: central file header signature 0x02014b50.
    assertThat(Arrays.copyOf(list, 4)).containsExactly('P', 'K', 1, 2);
    assertThat(list).hasSizeLessThan(jar("one", "").length);
  }

  @Test
  void one_changed_byte_of_a_file_changes_the_central_directory() throws IOException {
    assertThat(JarDirectory.list(jar("one", ""))).isEqualTo(JarDirectory.list(jar("one", "")));
    assertThat(JarDirectory.list(jar("one", ""))).isNotEqualTo(JarDirectory.list(jar("two", "")));
  }

  @Test
  void a_central_directory_that_is_not_found_returns_all_bytes() throws IOException {
    byte[] withComment = jar("one", "a comment after the list");

    assertThat(JarDirectory.list(withComment)).isEqualTo(withComment);
    assertThat(JarDirectory.list(new byte[3])).isEqualTo(new byte[3]);
  }

  private static byte[] jar(String content, String comment) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (String name : new String[] {"a/First.class", "a/Second.class"}) {
        ZipEntry entry = new ZipEntry(name);
        entry.setTime(0);
        zip.putNextEntry(entry);
        zip.write((name + content).getBytes(StandardCharsets.UTF_8));
      }
      zip.setComment(comment);
    }
    return out.toByteArray();
  }
}
