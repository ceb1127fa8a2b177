package taperbook.output.article;

/** A function that an article can call. */
public enum ArticleFunction {
  NUMBER("number", "\"ID\"", "a number of the reported session, in the report's units"),
  ABOUT("about", "\"ID\"", "the number as one speaks it, such as about 6\u00bd minutes"),
  RANGE("range", "\"ID\"", "its interval"),
  SPREAD("spread", "\"ID\"", "how far the truth may lie from it, as in give or take 25 s"),
  BOTH("both", "\"ID\"", "the number with its interval"),
  TABLE("table", "\"NAME\"", "a table of the report, at this place of the article"),
  FACT("fact", "\"ITEM\"", "a stated condition or item of the range test, in the report's units"),
  DATE("date", "\"published\"", "the day of publication, of the session or of the drive"),
  FIGURE("figure", "\"NAME\"", "a chart, at this place of the article");

  private final String word;
  private final String arguments;
  private final String meaning;

  ArticleFunction(String word, String arguments, String meaning) {
    this.word = word;
    this.arguments = arguments;
    this.meaning = meaning;
  }

  /** Returns its name. */
  String word() {
    return word;
  }

  /** Returns its syntax, such as <code>${number("ID")}</code>. */
  public String call() {
    return "${" + word + "(" + arguments + ")}";
  }

  /** Describes its output. */
  public String meaning() {
    return meaning;
  }
}
