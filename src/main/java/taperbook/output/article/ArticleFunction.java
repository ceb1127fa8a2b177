package taperbook.output.article;

import taperbook.i18n.Texts;

/** A function that an article can call. */
public enum ArticleFunction {
  NUMBER("number", "\"ID\""),
  ABOUT("about", "\"ID\""),
  RANGE("range", "\"ID\""),
  SPREAD("spread", "\"ID\""),
  BOTH("both", "\"ID\""),
  TABLE("table", "\"NAME\""),
  FACT("fact", "\"ITEM\""),
  DATE("date", "\"published\""),
  FIGURE("figure", "\"NAME\"");

  private final String word;
  private final String arguments;

  ArticleFunction(String word, String arguments) {
    this.word = word;
    this.arguments = arguments;
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
    return Texts.ofConstant("function", this, "meaning");
  }
}
