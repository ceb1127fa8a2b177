package taperbook.session;

/** An item of {@code conditions.csv} or {@code range-test.csv}. */
public interface Item {
  /** Returns the name used in the {@code item} column. */
  String words();

  /** Returns the form of its value. */
  ItemKind kind();

  /** Returns true if the row is required, even if its value is unknown. */
  boolean required();

  /** Describes what a tester enters there, in one or two sentences. */
  String explanation();
}
