package taperbook.chart.render;

import taperbook.chart.model.Background;
import taperbook.chart.model.ChartStyle;

/** One of the ways in which a figure is painted as PNG. */
public enum Rendition {
  /** 1920 x 1080 on white. */
  FILM("", ChartStyle.film()),
  /** 1920 x 1080 on a dark ground. */
  DARK("-dark", ChartStyle.film().on(Background.DARK)),
  /** 1920 x 1080 to lie over a moving picture. */
  CLEAR("-clear", ChartStyle.film().on(Background.CLEAR)),
  /** 1080 x 1350 on white, for a telephone held upright. */
  PORTRAIT("-portrait", ChartStyle.tall(1350)),
  /** 1080 x 1080 on white. */
  SQUARE("-square", ChartStyle.tall(1080)),
  /** 320 x 180 on a dark ground, drawn for this size: little text, none of it small. */
  SMALL("-small", ChartStyle.small().on(Background.DARK));

  private final String ending;
  private final ChartStyle style;

  Rendition(String ending, ChartStyle style) {
    this.ending = ending;
    this.style = style;
  }

  /** What is added to the stem of the figure's files. */
  public String ending() {
    return ending;
  }

  ChartStyle style() {
    return style;
  }
}
