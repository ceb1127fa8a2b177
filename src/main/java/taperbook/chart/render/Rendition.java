package taperbook.chart.render;

import taperbook.chart.model.Background;
import taperbook.chart.model.ChartStyle;

/** The PNG renditions of a figure. */
public enum Rendition {
  /** 1920 x 1080 on white. */
  FILM("", ChartStyle.film()),
  /** 1920 x 1080 on a dark background. */
  DARK("-dark", ChartStyle.film().on(Background.DARK)),
  /** 1920 x 1080, transparent, to overlay on a film. */
  CLEAR("-clear", ChartStyle.film().on(Background.CLEAR)),
  /** 1080 x 1350 on white, for a phone in portrait orientation. */
  PORTRAIT("-portrait", ChartStyle.tall(1350)),
  /** 1080 x 1080 on white. */
  SQUARE("-square", ChartStyle.tall(1080)),
  /** 320 x 180 on a dark background, with little text in a large size. */
  SMALL("-small", ChartStyle.small().on(Background.DARK));

  private final String ending;
  private final ChartStyle style;

  Rendition(String ending, ChartStyle style) {
    this.ending = ending;
    this.style = style;
  }

  /** Returns the suffix of the figure's file stem. */
  public String ending() {
    return ending;
  }

  ChartStyle style() {
    return style;
  }
}
