package taperbook.output.article;

import java.util.Locale;
import taperbook.i18n.Texts;

/** A function that an article can call. */
public enum ArticleFunction {
  NUMBER("ID"),
  ABOUT("ID"),
  RANGE("ID"),
  SPREAD("ID"),
  BOTH("ID"),
  TABLE("NAME"),
  FACT("ITEM"),
  DATE("published"),
  FIGURE("NAME");

  private final String argument;

  ArticleFunction(String argument) {
    this.argument = argument;
  }

  /** Returns its name. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Returns its syntax, such as <code>${number("ID")}</code>. */
  public String call() {
    return "${" + word() + "(\"" + argument + "\")}";
  }

  /** Describes its output. */
  public String meaning() {
    return Texts.ofConstant("function", this, "meaning");
  }
}
