package taperbook.session;

/** An item of {@code conditions.csv} or {@code range-test.csv}: one fact that can be stated. */
public interface Item {
  /** The item's name as it is written in the {@code item} column. */
  String words();

  /** What form its value takes. */
  ItemKind kind();

  /** True if the item must be there, even if only to say that it is unknown. */
  boolean required();

  /** What a tester writes there, in a sentence or two. */
  String explanation();
}
