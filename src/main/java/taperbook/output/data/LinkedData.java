package taperbook.output.data;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import taperbook.i18n.Texts;
import taperbook.plan.ReportPlan;
import taperbook.quantity.Estimate;
import taperbook.quantity.Unit;
import taperbook.result.ReportNumber;
import taperbook.result.ReportResult;

/**
 * Describes a report and its results for programs that read its page: JSON-LD with schema.org
 * terms. The numbers are those of {@code numbers.json}.
 *
 * @see <a href="https://www.w3.org/TR/json-ld11/#embedding-json-ld-in-html-documents">JSON-LD 1.1,
 *     section 7</a>
 * @see <a href="https://schema.org/Dataset">Dataset</a>
 */
public final class LinkedData {
  /** Common codes of UN/ECE Recommendation 20. */
  private static final Map<Unit, String> CODES =
      Map.of(
          Unit.SECOND, "SEC",
          Unit.PERCENT, "P1",
          Unit.KILOWATT, "KWT",
          Unit.KILOWATT_HOUR, "KWH",
          Unit.KILOMETRE, "KMT",
          Unit.KILOMETRE_PER_HOUR, "KMH",
          Unit.CELSIUS, "CEL");

  private final ReportResult result;
  private final ReportPlan.Heading heading;
  private final LocalDate published;
  private final String description;

  /**
   * Creates the data of one report.
   *
   * @param date date to use if the report states none
   * @param description the report in a sentence or two, as plain text
   */
  public LinkedData(ReportResult result, LocalDate date, String description) {
    this.result = result;
    this.heading = result.plan().heading();
    this.published = heading.published().orElse(date);
    this.description = description;
  }

  /**
   * Returns the data as the content of a script element. Escapes {@code <}, {@code >} and {@code
   * &}, so that no text can end the element or begin a comment.
   */
  public String text() {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.setPrettyPrinter(NumbersJson.printer());
      article(json);
    } catch (IOException e) {
      throw new UncheckedIOException("JSON-LD", e);
    }
    return out.toString().replace("<", "\\u003c").replace(">", "\\u003e").replace("&", "\\u0026");
  }

  private void article(JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("@context", "https://schema.org");
    json.writeStringField("@type", "Article");
    json.writeStringField("headline", heading.title());
    common(json, "author");
    json.writeStringField("description", description);
    json.writeStringField("inLanguage", Texts.of("page.language"));
    json.writeObjectFieldStart("about");
    json.writeStringField("@type", "Vehicle");
    json.writeStringField("name", result.main().session().vehicle());
    json.writeEndObject();
    json.writeObjectFieldStart("mainEntity");
    dataset(json);
    json.writeEndObject();
    json.writeEndObject();
  }

  /** Writes dates and author; the author is a text, as it may be a person or an organisation. */
  private void common(JsonGenerator json, String author) throws IOException {
    json.writeStringField("datePublished", published.toString());
    List<ReportPlan.Reason> corrections = heading.history().corrections();
    if (!corrections.isEmpty()) {
      json.writeStringField(
          "dateModified", corrections.get(corrections.size() - 1).day().toString());
    }
    if (!heading.author().isEmpty()) {
      json.writeStringField(author, heading.author());
    }
  }

  private void dataset(JsonGenerator json) throws IOException {
    json.writeStringField("@type", "Dataset");
    json.writeStringField("name", heading.title());
    json.writeStringField("description", DataPackage.DESCRIPTION);
    common(json, "creator");
    json.writeArrayFieldStart("distribution");
    download(json, "numbers.csv", "text/csv");
    download(json, "numbers.json", "application/json");
    json.writeEndArray();
    json.writeArrayFieldStart("variableMeasured");
    for (ReportNumber number : result.main().numbers().headline()) {
      if (number.estimate().isPresent()) {
        variable(json, number, number.estimate().get());
      }
    }
    json.writeEndArray();
  }

  private static void download(JsonGenerator json, String file, String type) throws IOException {
    json.writeStartObject();
    json.writeStringField("@type", "DataDownload");
    json.writeStringField("contentUrl", file);
    json.writeStringField("encodingFormat", type);
    json.writeEndObject();
  }

  private static void variable(JsonGenerator json, ReportNumber number, Estimate estimate)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("@type", "PropertyValue");
    json.writeStringField("propertyID", number.id());
    json.writeStringField("name", number.label());
    NumbersJson.amount(json, "value", estimate.value());
    NumbersJson.amount(json, "minValue", estimate.bounds().low());
    NumbersJson.amount(json, "maxValue", estimate.bounds().high());
    json.writeStringField("unitText", number.unit().symbol());
    String code = CODES.get(number.unit());
    if (code != null) {
      json.writeStringField("unitCode", code);
    }
    json.writeEndObject();
  }
}
