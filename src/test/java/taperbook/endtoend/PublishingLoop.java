package taperbook.endtoend;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import taperbook.workspace.PublishedFolder;
import taperbook.workspace.ReportLock;

/** A process that publishes two versions alternately until it is killed. */
final class PublishingLoop {
  static final int FILES = 12;

  private PublishingLoop() {}

  /** Publishes into the folder given as the first argument. */
  public static void main(String[] arguments) {
    Path reports = Path.of(arguments[0]);
    for (int i = 0; ; i++) {
      try (ReportLock lock = ReportLock.of(reports, "look")) {
        PublishedFolder published = new PublishedFolder(reports, "look");
        published.recover();
        published.replace(version(i % 2 == 0 ? "one" : "two"), Integer.toString(i));
        if (i == 0) {
          System.out.println("begun " + lock.waited());
        }
      }
    }
  }

  static Map<String, byte[]> version(String word) {
    Map<String, byte[]> files = new TreeMap<>();
    for (int i = 0; i < FILES; i++) {
      String text = (word + " " + i + "\n").repeat(2000);
      files.put("part" + i % 3 + "/file" + i, text.getBytes(StandardCharsets.UTF_8));
    }
    return files;
  }
}
