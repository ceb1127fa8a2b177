package taperbook.input.folder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class RegularFileTest {
  @TempDir private Path folder;

  /**
   * What Java on Windows returns for a junction, read without following links: the attribute of
   * folders is set, and a reparse point that is not a symbolic link counts as something else.
   *
   * @see <a
   *     href="https://github.com/openjdk/jdk17u/blob/master/src/java.base/windows/classes/sun/nio/fs/WindowsFileAttributes.java">
   *     WindowsFileAttributes, isDirectory and isOther</a>
   */
  private record Junction(FileTime lastModifiedTime) implements BasicFileAttributes {
    @Override
    public FileTime lastAccessTime() {
      return lastModifiedTime;
    }

    @Override
    public FileTime creationTime() {
      return lastModifiedTime;
    }

    @Override
    public boolean isRegularFile() {
      return false;
    }

    @Override
    public boolean isDirectory() {
      return true;
    }

    @Override
    public boolean isSymbolicLink() {
      return false;
    }

    @Override
    public boolean isOther() {
      return true;
    }

    @Override
    public long size() {
      return 0;
    }

    @Override
    public String fileKey() {
      return "";
    }
  }

  @Test
  void neither_a_link_nor_a_junction_to_a_folder_is_a_folder() throws IOException {
    Path target = Files.createDirectory(folder.resolve("target"));
    assertThat(RegularFile.isFolder(target)).isTrue();
    assertThat(RegularFile.isFolder(Files.createSymbolicLink(folder.resolve("link"), target)))
        .isFalse();
    assertThat(RegularFile.isFolder(folder.resolve("missing"))).isFalse();
    assertThat(RegularFile.isFolder(new Junction(FileTime.fromMillis(0)))).isFalse();
  }
}
