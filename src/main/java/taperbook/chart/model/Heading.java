package taperbook.chart.model;

import java.util.ArrayList;
import java.util.List;
import taperbook.chart.model.TextRun.Anchor;
import taperbook.chart.model.TextRun.Face;

/**
 * The title texts of a picture, which make it self-explanatory.
 *
 * @param finding its finding, as the title
 * @param quantity quantity and unit, as the subtitle
 * @param credit subject and author, in parts, most important first
 */
public record Heading(String finding, String quantity, List<String> credit) {
  private static final int MOST_TITLE_LINES = 3;
  private static final double LEADING = 1.25;
  private static final String JOINT = " \u00b7 ";

  public Heading {
    credit = List.copyOf(credit);
  }

  /** Returns these texts with a reading note, if there is room. */
  public Heading with(String note, ChartStyle style) {
    String both = note.isEmpty() ? quantity : quantity + ". " + note;
    int lines = style.isWide() ? 1 : 2;
    return style.words() == ChartStyle.Words.ALL && lines(both, style, below(style)).size() <= lines
        ? new Heading(finding, both, credit)
        : this;
  }

  /** Returns the placed texts; a thumbnail has none. */
  public List<TextRun> texts(ChartStyle style) {
    List<TextRun> texts = new ArrayList<>();
    if (style.isSmall()) {
      return texts;
    }
    double y = style.edges().down();
    y = add(texts, titleLines(style), title(style), y, style);
    add(texts, lines(quantity, style, below(style)), below(style), y, style);
    List<String> footer = creditLines(style);
    y = style.height() - style.edges().down() - footer.size() * LEADING * style.type().tick();
    add(texts, footer, credit(style), y, style);
    return texts;
  }

  /** Returns the area of the picture that the texts leave free. */
  public Box room(ChartStyle style) {
    double across = style.edges().across();
    double down = style.edges().down();
    double top = down + LEADING * style.type().title();
    double footer = 0;
    if (!style.isSmall()) {
      int below = lines(quantity, style, below(style)).size();
      top += (titleLines(style).size() - 1) * LEADING * style.type().title();
      top += (below * LEADING + 0.3) * style.type().label();
      footer = (creditLines(style).size() * LEADING + 0.3) * style.type().tick();
    }
    double height = style.height() - down - footer - top;
    return new Box(across, top, style.width() - 2 * across, height);
  }

  private static double add(
      List<TextRun> texts, List<String> lines, Face face, double top, ChartStyle style) {
    double y = top;
    for (String line : lines) {
      double baseline = y + face.size();
      texts.add(new TextRun(line, style.edges().across(), baseline, Anchor.START, face));
      y += LEADING * face.size();
    }
    return y;
  }

  private List<String> titleLines(ChartStyle style) {
    Face face = title(style);
    List<String> lines = lines(finding, style, face);
    // Balances the line lengths rather than leaving a single word on the last line.
    double width = room(style, face);
    List<String> even = lines;
    while (even.size() == lines.size() && width > face.size()) {
      lines = even;
      width -= face.size();
      even = face.wrapped(finding, width);
    }
    return lines.subList(0, Math.min(MOST_TITLE_LINES, lines.size()));
  }

  /** Returns as many unbroken parts as fit. */
  private List<String> creditLines(ChartStyle style) {
    List<String> lines = new ArrayList<>();
    Face face = credit(style);
    double room = room(style, face);
    for (String part : credit) {
      int at = 0;
      while (at < lines.size() && face.width(lines.get(at) + JOINT + part) > room) {
        at++;
      }
      if (at < lines.size()) {
        lines.set(at, lines.get(at) + JOINT + part);
      } else if (at < (style.isWide() ? 3 : 4) && face.width(part) <= room) {
        lines.add(part);
      }
    }
    return lines;
  }

  private static List<String> lines(String text, ChartStyle style, Face face) {
    return face.wrapped(text, room(style, face));
  }

  private static double room(ChartStyle style, Face face) {
    double slack = face.bold() ? 1 + 1.4 * (style.type().slack() - 1) : style.type().slack();
    return (style.width() - 2 * style.edges().across()) / slack;
  }

  private static Face title(ChartStyle style) {
    return new Face(style.type().title(), true, Palette.INK);
  }

  private static Face below(ChartStyle style) {
    return new Face(style.type().label(), false, Palette.GREY);
  }

  private static Face credit(ChartStyle style) {
    return new Face(style.type().tick(), false, Palette.GREY);
  }
}
