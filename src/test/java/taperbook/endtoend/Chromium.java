package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * Drives a page in Chromium with mouse, touch, and keyboard.
 *
 * @see <a href="https://chromedevtools.github.io/devtools-protocol/">Chrome DevTools Protocol</a>
 */
final class Chromium implements AutoCloseable {
  private static final Duration LONGEST = Duration.ofSeconds(60);

  private final Process process;
  private final WebSocket socket;
  private final Map<Integer, CompletableFuture<Map<String, Object>>> pending =
      new ConcurrentHashMap<>();
  private final List<String> complaints = new CopyOnWriteArrayList<>();
  private int count;

  private Chromium(Process process, String address) {
    this.process = process;
    this.socket =
        HttpClient.newHttpClient()
            .newWebSocketBuilder()
            .buildAsync(URI.create(address), new Listener())
            .join();
  }

  /**
   * Starts with an empty page; skips the test if there is no Chromium.
   *
   * @param scratch folder for files of the browser
   */
  static Chromium start(Path scratch) throws IOException, InterruptedException {
    var program = Browser.program();
    assumeTrue(program.isPresent(), "no Chromium on the path");
    Path folder = scratch.resolve("profile");
    List<String> command =
        new ArrayList<>(List.of(program.orElseThrow().toString(), "--remote-debugging-port=0"));
    command.addAll(Browser.QUIET);
    command.addAll(List.of("--user-data-dir=" + folder, "about:blank"));
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    Path port = folder.resolve("DevToolsActivePort");
    Waiting.until(
        "the browser begins",
        LONGEST,
        () -> Files.exists(port) && Files.readAllLines(port).size() >= 2);
    URI pages = URI.create("http://127.0.0.1:" + Files.readAllLines(port).get(0) + "/json");
    String list =
        HttpClient.newHttpClient()
            .send(HttpRequest.newBuilder(pages).build(), HttpResponse.BodyHandlers.ofString())
            .body();
    String address =
        ((List<?>) parsed(list))
            .stream()
                .map(page -> (Map<?, ?>) page)
                .filter(page -> "page".equals(page.get("type")))
                .map(page -> String.valueOf(page.get("webSocketDebuggerUrl")))
                .findFirst()
                .orElseThrow();
    Chromium browser = new Chromium(process, address);
    browser.ask("Page.enable", Map.of());
    browser.ask("Runtime.enable", Map.of());
    browser.ask("Log.enable", Map.of());
    return browser;
  }

  /** Sets the size of the window in pixels, of a phone with touch or of a desktop screen. */
  void size(int width, int height, boolean phone) {
    ask(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", phone));
    ask("Emulation.setTouchEmulationEnabled", Map.of("enabled", phone));
  }

  /** Sets the preferred colour scheme. */
  void dark(boolean dark) {
    Map<String, Object> scheme =
        Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light");
    ask("Emulation.setEmulatedMedia", Map.of("features", List.of(scheme)));
  }

  /** Disables scripts of pages opened later. */
  void withoutScripts() {
    ask("Emulation.setScriptExecutionDisabled", Map.of("value", true));
  }

  /** Opens a file and waits until it is loaded. */
  void open(Path page) {
    open(page.toUri().toString());
  }

  /** Opens a URL and waits until it is loaded. */
  void open(String address) {
    complaints.clear();
    ask("Page.navigate", Map.of("url", address));
    Waiting.until(
        "it is loaded: " + address,
        LONGEST,
        () ->
            "complete".equals(script("document.readyState"))
                && String.valueOf(script("location.href"))
                    .startsWith(address.replaceAll("#.*", "")));
  }

  /** Messages on the page's console since the page was opened. */
  List<String> complaints() {
    return List.copyOf(complaints);
  }

  /** Evaluates an expression in the page; returns a string, number, boolean, list, or map. */
  @Nullable Object script(String expression) {
    Map<String, Object> answer =
        ask(
            "Runtime.evaluate",
            Map.of("expression", expression, "returnByValue", true, "awaitPromise", true));
    assertThat(answer).as(expression).doesNotContainKey("exceptionDetails");
    return ((Map<?, ?>) answer.getOrDefault("result", Map.of())).get("value");
  }

  /** Text of the first element that matches a selector, with plain spaces. */
  String text(String selector) {
    return String.valueOf(script("document.querySelector('" + selector + "').innerText"))
        .replace('\u00a0', ' ')
        .strip();
  }

  double number(String expression) {
    return Double.parseDouble(String.valueOf(script(expression)));
  }

  /** Clicks the centre of an element. */
  void click(String selector) {
    double[] at = middle(selector);
    mouse("mouseMoved", at, "none");
    mouse("mousePressed", at, "left");
    mouse("mouseReleased", at, "left");
  }

  /** Moves the mouse over an element, to fractions of its width and height. */
  void hover(String selector, double across, double down) {
    mouse("mouseMoved", place(selector, across, down), "none");
  }

  /** Taps an element at fractions of its width and height. */
  void tap(String selector, double across, double down) {
    double[] at = place(selector, across, down);
    Map<String, Object> point = Map.of("x", at[0], "y", at[1]);
    ask("Input.dispatchTouchEvent", Map.of("type", "touchStart", "touchPoints", List.of(point)));
    ask("Input.dispatchTouchEvent", Map.of("type", "touchEnd", "touchPoints", List.of()));
  }

  /** Presses a key such as {@code ArrowRight}, {@code Enter}, or {@code Tab}. */
  void press(String key, int code) {
    Map<String, Object> down = new LinkedHashMap<>();
    down.put("type", "keyDown");
    down.put("key", key);
    down.put("code", key);
    down.put("windowsVirtualKeyCode", code);
    if (key.equals("Enter")) {
      down.put("text", "\r");
    } else if (key.equals(" ")) {
      down.put("text", " ");
    }
    ask("Input.dispatchKeyEvent", down);
    ask("Input.dispatchKeyEvent", Map.of("type", "keyUp", "key", key, "code", key));
  }

  void focus(String selector) {
    script("document.querySelector('" + selector + "').focus()");
  }

  /** The page as PDF. */
  byte[] printed() {
    return Base64.getDecoder().decode(String.valueOf(ask("Page.printToPDF", Map.of()).get("data")));
  }

  @Override
  public void close() {
    socket.abort();
    process.destroy();
    process.onExit().orTimeout(10, TimeUnit.SECONDS).exceptionally(slow -> process).join();
    process.destroyForcibly();
  }

  private double[] middle(String selector) {
    return place(selector, 0.5, 0.5);
  }

  private double[] place(String selector, double across, double down) {
    Object box =
        script(
            "(() => { const e = document.querySelector('"
                + selector
                + "'); e.scrollIntoView({block: 'center', behavior: 'instant'});"
                + " const b = e.getBoundingClientRect();"
                + " return [b.left + b.width * "
                + across
                + ", b.top + b.height * "
                + down
                + "]; })()");
    List<?> at = (List<?>) box;
    assertThat(at).isNotNull();
    return at == null
        ? new double[2]
        : at.stream().mapToDouble(n -> Double.parseDouble(String.valueOf(n))).toArray();
  }

  private void mouse(String type, double[] at, String button) {
    ask(
        "Input.dispatchMouseEvent",
        Map.of("type", type, "x", at[0], "y", at[1], "button", button, "clickCount", 1));
  }

  private Map<String, Object> ask(String method, Map<String, Object> parameters) {
    int id = ++count;
    CompletableFuture<Map<String, Object>> answer = new CompletableFuture<>();
    pending.put(id, answer);
    Map<String, Object> message = new LinkedHashMap<>();
    message.put("id", id);
    message.put("method", method);
    message.put("params", parameters);
    socket.sendText(written(message), true).join();
    return answer.orTimeout(LONGEST.toSeconds(), TimeUnit.SECONDS).join();
  }

  private final class Listener implements WebSocket.Listener {
    private final StringBuilder text = new StringBuilder();

    @Override
    public @Nullable CompletionStage<?> onText(
        WebSocket webSocket, CharSequence data, boolean last) {
      text.append(data);
      if (last) {
        Map<?, ?> message = (Map<?, ?>) parsed(text.toString());
        text.setLength(0);
        accept(message);
      }
      webSocket.request(1);
      return null;
    }
  }

  @SuppressWarnings("unchecked")
  private void accept(Map<?, ?> message) {
    if (message.get("id") instanceof Number id) {
      CompletableFuture<Map<String, Object>> answer = pending.remove(id.intValue());
      if (answer == null) {
        return;
      }
      if (message.get("result") instanceof Map<?, ?> result) {
        answer.complete((Map<String, Object>) result);
      } else {
        answer.completeExceptionally(new AssertionError(String.valueOf(message.get("error"))));
      }
    } else if (List.of("Log.entryAdded", "Runtime.exceptionThrown")
        .contains(String.valueOf(message.get("method")))) {
      complaints.add(String.valueOf(message.get("params")));
    }
  }

  private static String written(Object value) {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      write(json, value);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  private static void write(JsonGenerator json, Object value) throws IOException {
    if (value instanceof Map<?, ?> map) {
      json.writeStartObject();
      for (Map.Entry<?, ?> entry : map.entrySet()) {
        json.writeFieldName(String.valueOf(entry.getKey()));
        write(json, entry.getValue());
      }
      json.writeEndObject();
    } else if (value instanceof List<?> list) {
      json.writeStartArray();
      for (Object each : list) {
        write(json, each);
      }
      json.writeEndArray();
    } else if (value instanceof Boolean truth) {
      json.writeBoolean(truth);
    } else if (value instanceof Integer number) {
      json.writeNumber(number);
    } else if (value instanceof Double number) {
      json.writeNumber(number);
    } else {
      json.writeString(String.valueOf(value));
    }
  }

  /** JSON as maps, lists, strings, numbers, and booleans. */
  static Object parsed(String text) {
    try (JsonParser json = new JsonFactory().createParser(text)) {
      json.nextToken();
      return Objects.requireNonNull(read(json));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static @Nullable Object read(JsonParser json) throws IOException {
    return switch (json.currentToken()) {
      case START_OBJECT -> readMap(json);
      case START_ARRAY -> readList(json);
      case VALUE_STRING -> json.getText();
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> json.getNumberValue();
      case VALUE_TRUE -> true;
      case VALUE_FALSE -> false;
      default -> null;
    };
  }

  private static Map<String, @Nullable Object> readMap(JsonParser json) throws IOException {
    Map<String, @Nullable Object> map = new LinkedHashMap<>();
    while (json.nextToken() != JsonToken.END_OBJECT) {
      String name = json.currentName();
      json.nextToken();
      map.put(name, read(json));
    }
    return map;
  }

  private static List<@Nullable Object> readList(JsonParser json) throws IOException {
    List<@Nullable Object> list = new ArrayList<>();
    while (json.nextToken() != JsonToken.END_ARRAY) {
      list.add(read(json));
    }
    return list;
  }
}
