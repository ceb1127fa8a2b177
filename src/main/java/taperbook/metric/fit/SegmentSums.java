package taperbook.metric.fit;

/**
 * Sums over the points of a segment of products of the two hat functions (1 at one end, 0 at the
 * other, linear between) and the power.
 *
 * @param startStart start hat squared
 * @param startEnd start hat times end hat
 * @param endEnd end hat squared
 * @param startPower start hat times power
 * @param endPower end hat times power
 * @param powerPower power squared
 */
record SegmentSums(
    double startStart,
    double startEnd,
    double endEnd,
    double startPower,
    double endPower,
    double powerPower) {}
