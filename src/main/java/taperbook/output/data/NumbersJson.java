package taperbook.output.data;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.OutputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import taperbook.format.PlainDigits;
import taperbook.i18n.Message;
import taperbook.quantity.Estimate;
import taperbook.quantity.SocWindow;
import taperbook.result.CommonGround;
import taperbook.result.Contribution;
import taperbook.result.CrossCheck;
import taperbook.result.Numbers;
import taperbook.result.Outcome;
import taperbook.result.ReportNumber;
import taperbook.result.Results;
import taperbook.result.SessionResult;
import taperbook.result.StopTimes;
import taperbook.session.InputHash;
import taperbook.session.RowRef;

/** Writes {@code numbers.json}: every number, every cross-check and the hash of every input. */
public final class NumbersJson implements StreamedFile {
  /** Version of the format, which {@code src/docs/numbers.schema.json} describes. */
  private static final int FORMAT = 1;

  /** Digits beyond the tenth are floating-point noise. */
  private static final int SIGNIFICANT_DIGITS = 10;

  private final Results results;
  private final List<InputHash> inputs;

  /** Creates the numbers of a report or library with its input files. */
  public NumbersJson(Results results, List<InputHash> inputs) {
    this.results = results;
    this.inputs = List.copyOf(inputs);
  }

  /** Writes the file as UTF-8, number by number, and closes the stream. */
  @Override
  public void writeTo(OutputStream out) throws IOException {
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.setPrettyPrinter(printer());
      json.writeStartObject();
      json.writeNumberField("format", FORMAT);
      json.writeStringField("report", results.plan().name());
      inputs(json);
      json.writeArrayFieldStart("numbers");
      for (Numbers numbers : results.numbers()) {
        for (ReportNumber number : numbers.all()) {
          number(json, number);
        }
      }
      json.writeEndArray();
      json.writeArrayFieldStart("checks");
      for (SessionResult session : results.sessions()) {
        for (CrossCheck check : session.checks()) {
          check(json, session.session().name(), check);
        }
      }
      json.writeEndArray();
      sentences(json);
      if (results.common().shared().isPresent()) {
        ground(json, results.common());
      }
      Optional<StopTimes> stopTimes =
          results.sessions().stream().findFirst().flatMap(s -> s.curves().stopTimes().get());
      if (stopTimes.isPresent()) {
        json.writeFieldName("stop_times");
        json.writeRawValue(StopTimesJson.of(stopTimes.get()));
      }
      json.writeEndObject();
      json.writeRaw('\n');
    }
  }

  /** Returns a number as data files print it. */
  static String digits(double value) {
    return PlainDigits.of(value, SIGNIFICANT_DIGITS);
  }

  /** Returns the layout of all JSON files: two spaces, one line per field. */
  static DefaultPrettyPrinter printer() {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter(
            Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("")
                .withArrayEmptySeparator(""));
    printer.indentObjectsWith(indenter);
    printer.indentArraysWith(indenter);
    return printer;
  }

  private static void ground(JsonGenerator json, CommonGround ground) throws IOException {
    json.writeObjectFieldStart("common_ground");
    window(json, "shared", ground.shared());
    window(json, "warmed", ground.warmed());
    if (ground.energyKilowattHours().isPresent()) {
      json.writeNumberField("energy_kwh", ground.energyKilowattHours().getAsInt());
    } else {
      json.writeNullField("energy_kwh");
    }
    optional(json, "frozen_since", ground.frozen().map(f -> f.since().toString()));
    json.writeEndObject();
  }

  private static void window(JsonGenerator json, String name, Optional<SocWindow> window)
      throws IOException {
    if (window.isEmpty()) {
      json.writeNullField(name);
      return;
    }
    json.writeObjectFieldStart(name);
    json.writeNumberField("from", window.get().from());
    json.writeNumberField("to", window.get().to());
    json.writeEndObject();
  }

  private void inputs(JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("inputs");
    for (InputHash input : inputs) {
      json.writeStartObject();
      json.writeStringField("file", input.path());
      json.writeStringField("sha256", input.sha256());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** Each sentence of caveats and reasons once, with the messages that it consists of. */
  private void sentences(JsonGenerator json) throws IOException {
    Map<String, List<Message>> sentences = new LinkedHashMap<>();
    for (Numbers numbers : results.numbers()) {
      for (ReportNumber number : numbers.all()) {
        number.caveats().forEach(c -> sentences.putIfAbsent(c.sentence(), c.messages()));
        number.reason().ifPresent(r -> sentences.putIfAbsent(r.text(), List.of(r)));
      }
    }
    json.writeArrayFieldStart("sentences");
    for (Map.Entry<String, List<Message>> sentence : sentences.entrySet()) {
      json.writeStartObject();
      json.writeStringField("sentence", sentence.getKey());
      json.writeArrayFieldStart("messages");
      for (Message message : sentence.getValue()) {
        json.writeStartObject();
        json.writeStringField("code", message.key());
        strings(json, "arguments", message.arguments());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void number(JsonGenerator json, ReportNumber number) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", number.id());
    json.writeStringField("label", number.label());
    if (number.outcome() instanceof Outcome.Measured measured) {
      amount(json, "value", measured.estimate().value());
      json.writeStringField("unit", number.unit().symbol());
      bounds(json, measured.estimate());
      amount(json, "coverage", measured.coverage());
    } else {
      json.writeNullField("value");
      json.writeStringField("unit", number.unit().symbol());
      json.writeNullField("low");
      json.writeNullField("high");
      json.writeNullField("coverage");
    }
    json.writeStringField("basis", number.metric().basis().words());
    json.writeStringField("method", number.method().id());
    json.writeNumberField("method_version", number.method().version());
    json.writeStringField("session", number.origin().session());
    if (!number.origin().against().isEmpty()) {
      json.writeStringField("against", number.origin().against());
    }
    rows(json, number.origin().rows());
    budget(json, number.outcome().fold(Outcome.Measured::budget, w -> List.of()));
    strings(json, "caveats", results.cautions(number));
    optional(json, "withheld", number.withheld());
    json.writeEndObject();
  }

  private static void budget(JsonGenerator json, List<Contribution> budget) throws IOException {
    json.writeArrayFieldStart("budget");
    for (Contribution part : budget) {
      json.writeStartObject();
      json.writeStringField("source", part.source().words());
      amount(json, "standard_uncertainty", part.standardUncertainty());
      amount(json, "share", part.share());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void check(JsonGenerator json, String session, CrossCheck check)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("id", check.id());
    json.writeStringField("title", check.title());
    json.writeStringField("unit", check.unit().symbol());
    json.writeStringField("session", session);
    if (check.outcome() instanceof CrossCheck.Compared compared) {
      side(json, "first", compared.first());
      side(json, "second", compared.second());
      json.writeBooleanField("agrees", compared.agrees());
      amount(json, "difference", compared.difference().value());
      bounds(json, compared.difference());
      amount(json, "losses_allowed", 100 * compared.maxLoss());
    } else {
      for (String field :
          List.of("first", "second", "agrees", "difference", "low", "high", "losses_allowed")) {
        json.writeNullField(field);
      }
    }
    optional(
        json,
        "withheld",
        check.outcome().fold(c -> Optional.empty(), n -> Optional.of(n.reason().text())));
    json.writeEndObject();
  }

  private static void side(JsonGenerator json, String field, CrossCheck.Side side)
      throws IOException {
    json.writeObjectFieldStart(field);
    json.writeStringField("label", side.label());
    amount(json, "value", side.estimate().value());
    bounds(json, side.estimate());
    rows(json, side.rows());
    json.writeEndObject();
  }

  private static void bounds(JsonGenerator json, Estimate estimate) throws IOException {
    amount(json, "low", estimate.bounds().low());
    amount(json, "high", estimate.bounds().high());
  }

  static void amount(JsonGenerator json, String field, double value) throws IOException {
    json.writeFieldName(field);
    json.writeNumber(digits(value));
  }

  private static void rows(JsonGenerator json, List<RowRef> rows) throws IOException {
    strings(json, "rows", RowRuns.listed(rows));
  }

  static void strings(JsonGenerator json, String field, List<String> texts) throws IOException {
    json.writeArrayFieldStart(field);
    for (String text : texts) {
      json.writeString(text);
    }
    json.writeEndArray();
  }

  private static void optional(JsonGenerator json, String field, Optional<String> text)
      throws IOException {
    json.writeFieldName(field);
    if (text.isPresent()) {
      json.writeString(text.get());
    } else {
      json.writeNull();
    }
  }
}
