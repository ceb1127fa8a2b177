package taperbook.output;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.concurrent.ConcurrentSkipListMap;
import taperbook.output.data.StreamedFile;

/**
 * The files of one report by their path in its folder, such as {@code figures/power-over-soc.svg}.
 * Several threads may add files.
 */
public final class ReportFiles {
  private final SortedMap<String, byte[]> files = new ConcurrentSkipListMap<>();

  private final SortedMap<String, StreamedFile> streamed = new ConcurrentSkipListMap<>();

  ReportFiles() {}

  void put(String path, StreamedFile file) {
    streamed.put(path, file);
  }

  void put(String path, byte[] bytes) {
    files.put(path, bytes);
  }

  /** Returns these files with additional ones. */
  public ReportFiles with(Map<String, byte[]> others) {
    ReportFiles all = new ReportFiles();
    all.files.putAll(files);
    all.streamed.putAll(streamed);
    all.files.putAll(others);
    return all;
  }

  /** Returns the number of files. */
  public int count() {
    return files.size() + streamed.size();
  }

  /** Returns the files that are streamed rather than kept in memory. */
  public SortedMap<String, StreamedFile> streamed() {
    return Collections.unmodifiableSortedMap(streamed);
  }

  /** Returns the files in memory, in the order of their paths. */
  public SortedMap<String, byte[]> all() {
    return Collections.unmodifiableSortedMap(files);
  }

  /**
   * Returns a copy of a file's bytes.
   *
   * @throws IllegalArgumentException if there is no such file
   */
  public byte[] bytes(String path) {
    byte[] bytes = files.get(path);
    if (bytes == null) {
      throw new IllegalArgumentException("no file is called " + path);
    }
    return bytes.clone();
  }
}
