package taperbook.output.view;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import taperbook.chart.model.Box;
import taperbook.chart.model.Readout;

/** The data of a chart's reading line, as JSON to embed in a page. */
public final class ReadoutJson {
  /** Decimal places: a screen pixel is a thousandth of a plot. */
  private static final int PLACES = 3;

  private ReadoutJson() {}

  /** Returns the JSON, without characters that could end the enclosing element. */
  public static String of(Readout readout) {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.writeStartObject();
      plot(json, "wide", readout.wide());
      plot(json, "narrow", readout.narrow());
      json.writeArrayFieldStart("axis");
      json.writeNumber(rounded(readout.x().min()));
      json.writeNumber(rounded(readout.x().max()));
      json.writeEndArray();
      json.writeStringField("unit", readout.x().unit());
      json.writeArrayFieldStart("lines");
      for (Readout.Line line : readout.lines()) {
        line(json, line);
      }
      json.writeEndArray();
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString().replace("<", "\\u003c");
  }

  /** Writes left, top, width and height of the plot as shares of the picture. */
  private static void plot(JsonGenerator json, String name, Readout.Plot plot) throws IOException {
    Box picture = plot.picture();
    Box box = plot.plot();
    json.writeArrayFieldStart(name);
    json.writeNumber(rounded(box.left() / picture.width()));
    json.writeNumber(rounded(box.top() / picture.height()));
    json.writeNumber(rounded(box.width() / picture.width()));
    json.writeNumber(rounded(box.height() / picture.height()));
    json.writeEndArray();
  }

  private static void line(JsonGenerator json, Readout.Line line) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", line.name());
    if (line.ofSession()) {
      json.writeStringField("color", line.color());
    }
    json.writeStringField("unit", line.unit());
    json.writeArrayFieldStart("points");
    for (Readout.Point point : line.points()) {
      json.writeStartArray();
      json.writeNumber(rounded(point.x()));
      json.writeString(point.value());
      json.writeString(point.range());
      json.writeEndArray();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static BigDecimal rounded(double number) {
    return new BigDecimal(number).setScale(PLACES, RoundingMode.HALF_EVEN).stripTrailingZeros();
  }
}
