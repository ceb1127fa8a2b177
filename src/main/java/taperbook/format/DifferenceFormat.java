package taperbook.format;

import java.util.List;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.ReportNumber;

/**
 * The difference of a number of two sessions as a table prints it: who is ahead, and by how much.
 */
public final class DifferenceFormat {
  private final ReportNumber difference;
  private final Estimate signed;
  private final String one;
  private final String other;
  private final ColumnFormat text;

  /**
   * Words for a difference that was measured.
   *
   * @param difference the number of the one less that of the other
   * @param one what the one is called, such as {@code A}
   * @param other what the other is called
   */
  public DifferenceFormat(
      ReportNumber difference, String one, String other, NumberFormatter wording) {
    this.difference = difference;
    this.signed = difference.estimate().orElseThrow();
    this.one = one;
    this.other = other;
    this.text = new ColumnFormat(List.of(difference), wording);
  }

  /** Such as {@code A quicker by 6:02}; that the readings cannot tell where zero is in between. */
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

  /** The interval of what {@link #words} names; with signs where zero is in between. */
  public String ends() {
    return text.range(size());
  }

  private Estimate size() {
    return signed.value() < 0 && !signed.bounds().contains(0) ? signed.times(-1) : signed;
  }
}
