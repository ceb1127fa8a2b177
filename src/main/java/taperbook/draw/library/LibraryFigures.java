package taperbook.draw.library;

import java.util.ArrayList;
import java.util.List;
import taperbook.draw.picture.Figure;
import taperbook.model.LibraryResult;

/** Draws the figures of a library. */
public final class LibraryFigures {
  private LibraryFigures() {}

  /**
   * The figures in the order they should be shown: the two that hold sessions against each other,
   * where the numbers for them are there, and then all curves, twelve on each figure. The same
   * result gives the same figures, byte for byte.
   */
  public static List<Figure> draw(LibraryResult result) {
    LibraryWords words = new LibraryWords(result);
    List<Figure> figures = new ArrayList<>();
    new AverageOverPeak(words).figure().ifPresent(figures::add);
    new MinutesOverRange(words).figure().ifPresent(figures::add);
    figures.addAll(new LibraryCurves(words).figures());
    return figures;
  }
}
