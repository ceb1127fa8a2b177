package taperbook.chart.render;

import taperbook.chart.model.Chart;

/**
 * A figure before painting.
 *
 * @param chart the chart
 * @param caption its finding
 * @param textAlternative its description for those who cannot see it
 */
public record Draft(Chart chart, String caption, String textAlternative) {}
