package taperbook.chart.render;

import taperbook.chart.model.Chart;

/**
 * A figure before it is painted.
 *
 * @param chart what it shows
 * @param caption what it finds
 * @param textAlternative what it shows, in words
 */
public record Draft(Chart chart, String caption, String textAlternative) {}
