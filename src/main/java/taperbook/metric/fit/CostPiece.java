package taperbook.metric.fit;

import java.util.Optional;

/**
 * The least sum of squares up to a place as a quadratic of the line's height there, with the
 * earlier breakpoints that attain it.
 *
 * @param square coefficient of the height's square, above 0
 * @param linear coefficient of the height
 * @param constant sum of squares at height 0
 * @param place index of the place among the possible breakpoints
 * @param before the preceding piece, at the previous breakpoint
 * @param step true for the beginning of a segment after a step in the gap below the place
 */
record CostPiece(
    double square,
    double linear,
    double constant,
    int place,
    Optional<CostPiece> before,
    boolean step) {
  double at(double height) {
    return (square * height + linear) * height + constant;
  }

  double least() {
    return constant - linear * linear / (4 * square);
  }

  /**
   * Returns the cost after one more segment. With u the height at its start and v at its end, its
   * sum of squares is quadratic in both; u is eliminated at its optimum for each v.
   */
  CostPiece extended(SegmentSums sums, int endPlace) {
    double p = square + sums.startStart();
    double b1 = 2 * sums.startEnd();
    double b0 = linear - 2 * sums.startPower();
    return new CostPiece(
        sums.endEnd() - b1 * b1 / (4 * p),
        -2 * sums.endPower() - b1 * b0 / (2 * p),
        constant + sums.powerPower() - b0 * b0 / (4 * p),
        endPlace,
        Optional.of(this),
        false);
  }

  /**
   * Returns the cost after a step to the next place, where the line may begin at any height.
   *
   * @param points number of points at that place
   * @param power sum of their powers
   * @param squares sum of the squares of their powers
   */
  CostPiece stepped(double points, double power, double squares) {
    return new CostPiece(points, -2 * power, least() + squares, place + 1, Optional.of(this), true);
  }
}
