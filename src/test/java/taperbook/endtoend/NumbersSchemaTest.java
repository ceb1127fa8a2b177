package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import taperbook.cli.ExitStatus;
import taperbook.plan.Basis;
import taperbook.quantity.Quantity;
import taperbook.quantity.Unit;
import taperbook.result.UncertaintySource;

/**
 * Validates the {@code numbers.json} of the program with the published schema.
 *
 * @see <a href="https://json-schema.org/draft/2020-12/json-schema-core">JSON Schema 2020-12</a>
 */
@Tag("slow")
final class NumbersSchemaTest {
  private static final Path FILE = Path.of("src/docs/numbers.schema.json");
  private static final ObjectMapper JSON = new ObjectMapper();

  /** Optional fields of a document. */
  private static final Set<String> OPTIONAL =
      Set.of("/common_ground", "/numbers//against", "/stop_times");

  @TempDir private Path folder = Path.of("");

  @Test
  void the_schema_is_valid_by_its_draft() throws IOException {
    Schema draft =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId()));
    assertThat(draft.validate(schemaTree())).isEmpty();
    assertThat(draft.validate(JSON.readTree("{\"type\": \"numbr\"}"))).isNotEmpty();
  }

  @Test
  void every_report_and_library_of_the_demo_and_of_the_corpus_validates() throws IOException {
    Schema schema = schema();
    for (String name : List.of("finch-first-look", "veldt-long-plateau", "library")) {
      assertThat(schema.validate(built("reports/" + name + "/numbers.json"))).as(name).isEmpty();
    }
    Workplace place = new Workplace(folder);
    Path valid = Path.of("src/test/resources/corpus/valid");
    for (Path file : filesBelow(valid)) {
      Path copy = folder.resolve(valid.relativize(file).toString());
      Files.createDirectories(copy.resolve(".."));
      Files.copy(file, copy);
    }
    assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
    assertThat(schema.validate(JSON.readTree(place.text("reports/look/numbers.json")))).isEmpty();
  }

  @Test
  void a_document_with_a_missing_or_renamed_field_is_invalid() throws IOException {
    Schema schema = schema();
    JsonNode whole = sample(built("reports/finch-first-look/numbers.json"));
    assertThat(schema.validate(whole)).isEmpty();
    List<String> fields = fields(whole);
    assertThat(fields)
        .contains("/format", "/numbers/0/budget/0/share", "/checks/0/first/rows", "/inputs/0/file")
        .contains("/common_ground/shared/from", "/numbers/0/against", "/numbers/1/withheld");
    for (String field : fields) {
      int cut = field.lastIndexOf('/');
      String name = field.substring(cut + 1);
      JsonNode renamed = whole.deepCopy();
      ObjectNode owner = (ObjectNode) renamed.at(field.substring(0, cut));
      JsonNode value = owner.remove(name);
      if (!OPTIONAL.contains(field.replaceAll("[0-9]+", ""))) {
        assertThat(schema.validate(renamed)).as("without " + field).isNotEmpty();
      }
      owner.set(name + "s", value);
      assertThat(schema.validate(renamed)).as(field + " by another name").isNotEmpty();
    }
  }

  @Test
  void a_document_with_an_impossible_value_is_invalid() throws IOException {
    Schema schema = schema();
    JsonNode whole = sample(built("reports/finch-first-look/numbers.json"));
    for (String change :
        List.of(
            "/format 2",
            "/inputs []",
            "/inputs/0/sha256 \"ABC\"",
            "/numbers/0/unit \"kilowatt\"",
            "/numbers/0/value null",
            "/numbers/0/value \"1\"",
            "/numbers/0/basis \"guessed\"",
            "/numbers/0/coverage 1.5",
            "/numbers/0/withheld \"\"",
            "/numbers/0/withheld \"why\"",
            "/numbers/0/rows [\"readings.csv\"]",
            "/numbers/0/budget/0/source \"chance\"",
            "/numbers/0/budget/0/share -0.1",
            "/checks/0/agrees null",
            "/checks/0/first null",
            "/common_ground/shared null",
            "/common_ground/frozen_since \"May\"",
            "/stop_times/unit \"min\"",
            "/stop_times/seconds []",
            "/stop_times/seconds [[[1, 2]]]",
            "/stop_times/seconds [[[1, 2, 3, 4]]]",
            "/stop_times/seconds [[[1.5, 1, 2]]]")) {
      String[] parts = change.split(" ", 2);
      int cut = parts[0].lastIndexOf('/');
      JsonNode other = whole.deepCopy();
      ObjectNode owner = (ObjectNode) other.at(parts[0].substring(0, cut));
      owner.set(parts[0].substring(cut + 1), JSON.readTree(parts[1]));
      assertThat(schema.validate(other)).as(change).isNotEmpty();
    }
  }

  @Test
  void enumerations_are_those_of_the_program() throws IOException {
    JsonNode defs = schemaTree().get("$defs");
    assertThat(texts(defs.at("/unit/enum")))
        .isEqualTo(
            Arrays.stream(Quantity.values())
                .map(q -> Unit.base(q).symbol())
                .collect(Collectors.toSet()));
    assertThat(texts(defs.at("/number/properties/basis/enum")))
        .isEqualTo(Arrays.stream(Basis.values()).map(Basis::words).collect(Collectors.toSet()));
    assertThat(texts(defs.at("/contribution/properties/source/enum")))
        .isEqualTo(
            Arrays.stream(UncertaintySource.values())
                .map(UncertaintySource::words)
                .collect(Collectors.toSet()));
  }

  private static Schema schema() throws IOException {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(Files.readString(FILE));
  }

  private static JsonNode schemaTree() throws IOException {
    return JSON.readTree(Files.readString(FILE));
  }

  private JsonNode built(String path) throws IOException {
    Path demo = folder.resolve("demo-" + path.replace('/', '-'));
    return JSON.readTree(Workplace.withMadeDemo(demo).text(path));
  }

  private static List<Path> filesBelow(Path folder) throws IOException {
    try (var all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).toList();
    }
  }

  /** A number of a pair with a budget, a withheld number, a check of each kind, and an input. */
  private static JsonNode sample(JsonNode whole) {
    ObjectNode some = whole.deepCopy();
    ObjectNode measured = first(whole.get("numbers"), "/budget/0").deepCopy();
    measured.set("against", first(whole.get("numbers"), "/against").get("against"));
    ArrayNode numbers = JSON.createArrayNode().add(measured);
    for (JsonNode number : whole.get("numbers")) {
      if (number.get("value").isNull() && numbers.size() < 2) {
        numbers.add(number);
      }
    }
    some.set("numbers", numbers);
    some.set("checks", JSON.createArrayNode().add(first(whole.get("checks"), "/first/value")));
    some.set("inputs", JSON.createArrayNode().add(whole.at("/inputs/0")));
    return some;
  }

  private static JsonNode first(JsonNode list, String part) {
    return StreamSupport.stream(list.spliterator(), false)
        .filter(n -> !n.at(part).isMissingNode())
        .findFirst()
        .orElseThrow();
  }

  private static List<String> fields(JsonNode tree) {
    List<String> all = new ArrayList<>();
    collect(tree, "", all);
    return all;
  }

  private static void collect(JsonNode node, String at, List<String> all) {
    if (node.isObject()) {
      node.properties()
          .forEach(
              field -> {
                all.add(at + "/" + field.getKey());
                collect(field.getValue(), at + "/" + field.getKey(), all);
              });
    } else {
      for (int i = 0; i < node.size(); i++) {
        collect(node.get(i), at + "/" + i, all);
      }
    }
  }

  private static Set<String> texts(JsonNode list) {
    Set<String> texts = new TreeSet<>();
    list.forEach(text -> texts.add(text.textValue()));
    return texts;
  }
}
