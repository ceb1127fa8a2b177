package taperbook.metric.fit;

/**
 * Where one straight segment ends and the next begins.
 *
 * @param soc state of charge, %; of a step the middle of the gap in which it lies
 * @param step true if the power jumps there, false if only the slope changes
 */
record Break(double soc, boolean step) {}
