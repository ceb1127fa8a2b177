package taperbook.format;

import java.util.List;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.ReportNumber;

/**
 * Formats the difference of a number of two sessions for a table: which one is ahead, and by how
 * much.
 */
public final class DifferenceFormat {
  private final ReportNumber difference;
  private final Estimate signed;
  private final String one;
  private final String other;
  private final ColumnFormat text;

  /**
   * Creates the format of a measured difference.
   *
   * @param difference the number of the first session minus that of the other
   * @param one name of the first session, such as {@code A}
   * @param other name of the other session
   */
  public DifferenceFormat(
      ReportNumber difference, String one, String other, NumberFormatter wording) {
    this.difference = difference;
    this.signed = difference.estimate().orElseThrow();
    this.one = one;
    this.other = other;
    this.text = new ColumnFormat(List.of(difference), wording);
  }

  /**
   * Returns text such as {@code A quicker by 6:02}, or that the readings cannot tell if the
   * interval contains zero.
   */
  public String words() {
    if (signed.bounds().contains(0)) {
      return Labels.of("mark.undecided");
    }
    boolean more = signed.value() > 0;
    String amount = text.value(size());
    if (difference.unit() == Unit.SECOND && !difference.id().startsWith("peak_hold")) {
      return Labels.of("difference.quicker", more ? other : one, amount);
    }
    return Labels.of("difference.more", more ? one : other, amount);
  }

  /** Returns the interval of the amount in {@link #words}; with signs if it contains zero. */
  public String ends() {
    return text.range(size());
  }

  private Estimate size() {
    return signed.value() < 0 && !signed.bounds().contains(0) ? signed.times(-1) : signed;
  }
}
