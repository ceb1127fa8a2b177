package taperbook.verify;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** JSON as maps, lists, strings, decimals, booleans and nulls. */
final class JsonTree {
  private JsonTree() {}

  /** Reads one value; Jackson's own limits apply to depth and length. */
  static @Nullable Object read(JsonParser parser) throws IOException {
    return parser.nextToken() == null ? null : value(parser);
  }

  private static @Nullable Object value(JsonParser parser) throws IOException {
    return switch (parser.currentToken()) {
      case START_OBJECT -> {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
          String name = parser.currentName();
          parser.nextToken();
          map.put(name, value(parser));
        }
        yield map;
      }
      case START_ARRAY -> {
        List<@Nullable Object> list = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
          list.add(value(parser));
        }
        yield list;
      }
      case VALUE_STRING -> parser.getText();
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDecimalValue();
      case VALUE_TRUE -> true;
      case VALUE_FALSE -> false;
      default -> null;
    };
  }

  static Optional<String> text(Map<?, ?> json, String name) {
    return json.get(name) instanceof String text ? Optional.of(text) : Optional.empty();
  }

  /** Returns an amount that fits a {@code double}, as all amounts written by this program do. */
  static OptionalDouble amount(Map<?, ?> json, String name) {
    return json.get(name) instanceof BigDecimal amount && Double.isFinite(amount.doubleValue())
        ? OptionalDouble.of(amount.doubleValue())
        : OptionalDouble.empty();
  }

  static List<String> texts(Map<?, ?> json, String name) {
    List<String> texts = new ArrayList<>();
    if (json.get(name) instanceof List<?> list) {
      list.forEach(e -> texts.add(String.valueOf(e)));
    }
    return texts;
  }

  static List<Map<?, ?>> objects(Map<?, ?> json, String name) {
    List<Map<?, ?>> objects = new ArrayList<>();
    if (json.get(name) instanceof List<?> list) {
      for (Object element : list) {
        if (element instanceof Map<?, ?> map) {
          objects.add(map);
        }
      }
    }
    return objects;
  }
}
