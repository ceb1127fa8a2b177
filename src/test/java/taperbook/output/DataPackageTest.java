package taperbook.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import taperbook.session.InputFile;
import taperbook.session.InputTable;

/**
 * Checks {@code datapackage.json} against the rules of the published specifications, version 1.
 *
 * <p>Packages of the demo were also loaded manually with an independent implementation of the
 * specifications, without errors; it is not part of this build.
 *
 * @see <a href="https://specs.frictionlessdata.io/data-package/">Data Package</a>
 * @see <a href="https://specs.frictionlessdata.io/data-resource/">Data Resource</a>
 * @see <a href="https://specs.frictionlessdata.io/table-schema/">Table Schema</a>
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class DataPackageTest {
  private static final String SEMICOLONS =
      "elapsed [min:s];soc [%];power [kW];note\r\n0:00;10;90,5;\r\n1:00;12;120;\"a;b\"\r\n";

  private ReportFiles files = InventedReport.written();
  private Map<String, Object> root = Map.of();

  @BeforeAll
  void write() throws IOException {
    ReportJob job = InventedReport.job();
    InputFile file =
        new InputFile(
            "sessions/Finch_Spring/readings.csv", SEMICOLONS.getBytes(StandardCharsets.UTF_8));
    InputTable table =
        new InputTable(
            file,
            "utf-8",
            ';',
            List.of("elapsed [min:s]", "soc [%]", "power [kW]", "note"),
            () ->
                Stream.of(List.of("0:00", "10", "90,5", ""), List.of("1:00", "12", "120", "a;b")));
    ReportJob withTables = InventedReport.with(job, List.of(table));
    files = ReportWriter.write(withTables).value().orElseThrow();
    root = map(JsonDocument.read(files.bytes("datapackage.json")));
  }

  @Test
  void the_package_has_a_valid_name_and_at_least_one_resource() {
    assertThat(root.get("name")).asString().matches("[-a-z0-9._/]+");
    assertThat(root.get("profile")).isEqualTo("tabular-data-package");
    assertThat(resources())
        .extracting(r -> r.get("path"))
        .containsExactly("numbers.csv", "data/Finch_Spring/readings.csv", "share/table.csv");
  }

  @Test
  void version_and_creation_are_the_date_of_the_report() {
    // RFC 3339 and Semantic Versioning, as the specification requires; published on 10 May 2026.
    assertThat(root.get("created")).isEqualTo("2026-05-10T00:00:00Z");
    assertThat(root.get("version")).isEqualTo("2026.5.10");
  }

  @Test
  void names_of_resources_are_valid_and_unique() {
    List<Object> names = resources().stream().map(r -> r.get("name")).toList();
    assertThat(names).doesNotHaveDuplicates();
    assertThat(names).allMatch(n -> String.valueOf(n).matches("[-a-z0-9._/]+"));
  }

  @Test
  void each_path_names_a_file_of_the_stated_size_and_hash() throws NoSuchAlgorithmException {
    for (Map<String, Object> resource : resources()) {
      String path = String.valueOf(resource.get("path"));
      assertThat(path).doesNotStartWith("/").doesNotContain("..").doesNotContain("\\");
      byte[] bytes = files.bytes(path);
      assertThat(resource.get("bytes")).isEqualTo(BigDecimal.valueOf(bytes.length));
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      assertThat(resource.get("hash")).isEqualTo("sha256:" + HexFormat.of().formatHex(digest));
      assertThat(resource.get("profile")).isEqualTo("tabular-data-resource");
      assertThat(resource.get("mediatype")).isEqualTo("text/csv");
    }
  }

  @Test
  void fields_are_named_like_the_heads_of_the_file_in_their_order() {
    for (Map<String, Object> resource : resources()) {
      String text = text(String.valueOf(resource.get("path")));
      String delimiter = String.valueOf(map(resource.get("dialect")).get("delimiter"));
      List<String> heads = List.of(text.substring(0, text.indexOf('\r')).split(delimiter, -1));
      assertThat(fields(resource)).extracting(f -> String.valueOf(f.get("name"))).isEqualTo(heads);
      assertThat(fields(resource)).allMatch(f -> !String.valueOf(f.get("description")).isEmpty());
    }
  }

  @Test
  void a_column_of_numbers_is_typed_also_with_a_decimal_comma() {
    List<Map<String, Object>> fields = fields(resources().get(1));
    assertThat(fields)
        .extracting(f -> f.get("type"))
        .containsExactly("string", "number", "number", "string");
    assertThat(fields.get(2).get("decimalChar")).isEqualTo(",");
    assertThat(fields.get(2).get("description")).asString().endsWith("in kW");
  }

  @Test
  void a_primary_key_names_fields_and_is_unique() {
    assertThat(map(resources().get(0).get("schema")).get("primaryKey"))
        .isEqualTo(List.of("id", "session"));
    assertThat(map(resources().get(1).get("schema")).get("primaryKey"))
        .isEqualTo(List.of("elapsed [min:s]"));
    // Ids and session names contain no comma: the first and the ninth cell can be found from the
    // ends.
    List<String> ids = new ArrayList<>();
    for (String line : text("numbers.csv").split("\r\n", -1)) {
      String id = line.split(",", 2)[0];
      String session = line.contains(",finch-spring,") ? "finch-spring" : "main";
      ids.add(id + " " + session);
    }
    assertThat(ids).doesNotHaveDuplicates();
  }

  @Test
  void an_empty_cell_is_a_missing_value() {
    for (Map<String, Object> resource : resources()) {
      assertThat(map(resource.get("schema")).get("missingValues")).isEqualTo(List.of(""));
    }
  }

  private String text(String path) {
    return new String(files.bytes(path), StandardCharsets.UTF_8);
  }

  private List<Map<String, Object>> resources() {
    return maps(Objects.requireNonNull(root.get("resources")));
  }

  private static List<Map<String, Object>> fields(Map<String, Object> resource) {
    return maps(Objects.requireNonNull(map(resource.get("schema")).get("fields")));
  }

  private static List<Map<String, Object>> maps(Object list) {
    List<Map<String, Object>> maps = new ArrayList<>();
    ((List<?>) list).forEach(o -> maps.add(map(o)));
    return maps;
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> map(@org.jspecify.annotations.Nullable Object value) {
    return (Map<String, Object>) Objects.requireNonNull(value);
  }
}
