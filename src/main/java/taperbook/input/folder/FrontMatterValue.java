package taperbook.input.folder;

/**
 * A value of the front matter, with its location.
 *
 * @param text the text without surrounding spaces and quotes, not empty
 * @param line line number from 1
 * @param column number of its first character in the line, from 1
 */
public record FrontMatterValue(String text, int line, int column) {}
