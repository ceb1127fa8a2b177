/**
 * The first stage: bytes to raw rows and entries, each with the line it stands on. Comes in: a
 * project folder and its files. Goes out: {@code InputFile}, {@code CsvTable}, {@code RawReport}.
 * The only user of Commons CSV and, with {@code app}, of the file system; knows nothing of what the
 * rows mean.
 */
@NullMarked
package taperbook.read;

import org.jspecify.annotations.NullMarked;
