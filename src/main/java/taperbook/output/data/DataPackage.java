package taperbook.output.data;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import taperbook.i18n.Texts;
import taperbook.plan.Plan;
import taperbook.session.InputFile;
import taperbook.session.InputHash;
import taperbook.session.InputTable;

/**
 * Writes {@code datapackage.json}, which describes the tables next to it for programs. Omits the
 * licence, as only the tester can grant one.
 *
 * @see <a href="https://specs.frictionlessdata.io/data-package/">Data Package, version 1</a>
 * @see <a href="https://specs.frictionlessdata.io/tabular-data-resource/">Tabular Data Resource</a>
 * @see <a href="https://specs.frictionlessdata.io/table-schema/">Table Schema, version 1</a>
 */
public final class DataPackage {
  /** Description of the data of a report. */
  static final String DESCRIPTION = Texts.of("data.data_package.numbers_of_report_on_charging");

  private final Plan plan;
  private final LocalDate day;
  private final List<TableResource> resources = new ArrayList<>();

  /**
   * Creates a package with the tester's tables, loading one at a time.
   *
   * @param date date to use if the report states none
   */
  public DataPackage(Plan plan, LocalDate date, Iterable<InputTable> tables) {
    this.plan = plan;
    this.day = plan.heading().published().orElse(date);
    tables.forEach(t -> resources.add(InputResources.of(t)));
  }

  /** Adds {@code numbers.csv} before all others, given its hash and length. */
  public void numbers(NumbersCsv csv, InputHash file) {
    resources.add(0, csv.described(file));
  }

  /** Adds {@code share/table.csv}, which has the texts of the page. */
  public void milestones(byte[] csv, List<String> columns, List<List<String>> rows) {
    resources.add(
        TableResource.generated(
            Texts.of("data.generated_resources.time_power_energy_and_distance"),
            new InputFile("share/table.csv", csv).withoutContent(),
            IntStream.range(0, columns.size())
                .mapToObj(
                    i ->
                        new ColumnSchema(
                            columns.get(i),
                            ColumnSchema.typeOf(() -> rows.stream().map(row -> row.get(i))),
                            columns.get(i)))
                .toList(),
            List.of(columns.get(0))));
  }

  /** Adds {@code corrections.csv}, after {@code numbers.csv}. */
  public void corrections(byte[] csv) {
    resources.add(Math.min(1, resources.size()), CorrectionsCsv.described(csv));
  }

  /** Returns the descriptor and the tester's tables, by path. */
  public Map<String, byte[]> files() {
    Map<String, byte[]> files = new TreeMap<>();
    resources.stream()
        .flatMap(r -> r.content().stream())
        .forEach(file -> files.put(file.path(), file.content()));
    files.put("datapackage.json", bytes());
    return files;
  }

  /** Converts text to a name: lower-case letters, digits, dots, hyphens and underscores. */
  static String name(String text) {
    String name = text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9._]+", "-");
    return name.isEmpty() ? "report" : name;
  }

  private byte[] bytes() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.setPrettyPrinter(NumbersJson.printer());
      json.writeStartObject();
      heading(json);
      json.writeArrayFieldStart("resources");
      Set<String> taken = new HashSet<>();
      for (TableResource resource : resources) {
        resource(json, resource, free(resource.name(), taken));
      }
      json.writeEndArray();
      json.writeEndObject();
      json.writeRaw('\n');
    } catch (IOException e) {
      throw new UncheckedIOException("datapackage.json", e);
    }
    return out.toByteArray();
  }

  private void heading(JsonGenerator json) throws IOException {
    json.writeStringField("profile", "tabular-data-package");
    json.writeStringField("name", name(plan.name()));
    json.writeStringField("title", plan.heading().title());
    json.writeStringField("description", DESCRIPTION);
    json.writeStringField(
        "version", day.getYear() + "." + day.getMonthValue() + "." + day.getDayOfMonth());
    json.writeStringField("created", day + "T00:00:00Z");
    if (!plan.heading().author().isEmpty()) {
      json.writeArrayFieldStart("contributors");
      json.writeStartObject();
      json.writeStringField("title", plan.heading().author());
      json.writeStringField("role", "author");
      json.writeEndObject();
      json.writeEndArray();
    }
  }

  private static void resource(JsonGenerator json, TableResource resource, String name)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("name", name);
    json.writeStringField("title", resource.title());
    json.writeStringField("path", resource.file().path());
    json.writeStringField("profile", "tabular-data-resource");
    json.writeStringField("format", "csv");
    json.writeStringField("mediatype", "text/csv");
    json.writeStringField("encoding", resource.encoding());
    json.writeNumberField("bytes", resource.file().bytes());
    json.writeStringField("hash", "sha256:" + resource.file().sha256());
    json.writeObjectFieldStart("dialect");
    json.writeStringField("delimiter", String.valueOf(resource.delimiter()));
    json.writeStringField("quoteChar", "\"");
    json.writeBooleanField("doubleQuote", true);
    json.writeBooleanField("header", true);
    json.writeEndObject();
    schema(json, resource);
    json.writeEndObject();
  }

  private static void schema(JsonGenerator json, TableResource resource) throws IOException {
    json.writeObjectFieldStart("schema");
    json.writeArrayFieldStart("fields");
    for (ColumnSchema column : resource.columns()) {
      json.writeStartObject();
      json.writeStringField("name", column.name());
      json.writeStringField("type", column.type().word());
      if (column.type() == ColumnSchema.Type.COMMA_NUMBER) {
        json.writeStringField("decimalChar", ",");
      }
      json.writeStringField("description", column.description());
      json.writeEndObject();
    }
    json.writeEndArray();
    NumbersJson.strings(json, "missingValues", List.of(""));
    if (!resource.key().isEmpty()) {
      NumbersJson.strings(json, "primaryKey", resource.key());
    }
    json.writeEndObject();
  }

  private static String free(String name, Set<String> taken) {
    String free = name;
    for (int i = 2; !taken.add(free); i++) {
      free = name + "-" + i;
    }
    return free;
  }
}
