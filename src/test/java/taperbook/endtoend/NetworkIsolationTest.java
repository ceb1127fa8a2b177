package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import taperbook.cli.ExitStatus;

/**
 * Whatever a template or an article references, building the report and reading it opens no
 * connection and no file outside the folder. A listener on this machine represents the web.
 */
@Tag("slow")
final class NetworkIsolationTest {
  private static final String SECRET = "Quarrysecret";

  @TempDir private Path folder = Path.of("");

  @Test
  void nothing_outside_is_requested_or_printed() throws Exception {
    Path secret = Files.writeString(Files.createTempFile("outside", ".txt"), SECRET);
    AtomicInteger connections = new AtomicInteger();
    AtomicInteger sent = new AtomicInteger();
    try (ServerSocket web = listener(connections, sent)) {
      copyValid();
      String url = "http://127.0.0.1:" + web.getLocalPort() + "/x";
      insertReferences(url, secret, "report.ftlh");
      Workplace place = new Workplace(folder);
      assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
      assertThat(connections).as("connections while the report is made").hasValue(0);
      Path look = folder.resolve("reports/look");
      try (PDDocument pdf = Loader.loadPDF(look.resolve("report.pdf").toFile())) {
        assertThat(new PDFTextStripper().getText(pdf)).contains("peaked").doesNotContain(SECRET);
      }
      String html = Files.readString(look.resolve("report.html"));
      assertThat(html).contains("default-src 'none'").doesNotContain(SECRET);
      open(look.resolve("report.html"));
      // The browser may open a connection before it applies the policy; it must not send a request.
      assertThat(sent).as("requests while the page is read").hasValue(0);
    } finally {
      Files.delete(secret);
    }
  }

  @Test
  void the_page_of_a_library_requests_nothing_outside() throws Exception {
    Path secret = Files.writeString(Files.createTempFile("outside", ".txt"), SECRET);
    AtomicInteger connections = new AtomicInteger();
    AtomicInteger sent = new AtomicInteger();
    try (ServerSocket web = listener(connections, sent)) {
      copyValid();
      Path article = folder.resolve("reports/look.md");
      Files.writeString(
          article, "---\nkind: library\ntitle: All\nunits: km\n---\nOne car peaked here.\n");
      insertReferences("http://127.0.0.1:" + web.getLocalPort() + "/x", secret, "library.ftlh");
      Workplace place = new Workplace(folder);
      assertThat(place.run("report")).as(place.err()).isEqualTo(ExitStatus.DONE);
      assertThat(connections).as("connections while the library is made").hasValue(0);
      String html = Files.readString(folder.resolve("reports/look/report.html"));
      assertThat(html).contains("default-src 'none'", "script-src 'sha256-", "/x.png");
      assertThat(html).doesNotContain(SECRET);
      open(folder.resolve("reports/look/report.html"));
      assertThat(sent).as("requests while the page is read").hasValue(0);
    } finally {
      Files.delete(secret);
    }
  }

  @Test
  void the_listener_detects_a_connection() throws Exception {
    AtomicInteger connections = new AtomicInteger();
    AtomicInteger sent = new AtomicInteger();
    try (ServerSocket web = listener(connections, sent);
        Socket client = new Socket(web.getInetAddress(), web.getLocalPort())) {
      client.getOutputStream().write('G');
      assertThat(client.getInputStream().read()).isEqualTo(-1);
      assertThat(connections).hasValue(1);
      assertThat(sent).hasValue(1);
    }
  }

  @Test
  void charts_contain_no_script_and_no_reference() throws Exception {
    Workplace place = Workplace.withMadeDemo(folder);
    try (Stream<Path> all = Files.walk(place.path("reports"))) {
      List<Path> charts = all.filter(p -> p.toString().endsWith(".svg")).toList();
      assertThat(charts).hasSizeGreaterThan(10);
      for (Path chart : charts) {
        String svg = Files.readString(chart);
        assertThat(svg)
            .as(chart.toString())
            .doesNotContainPattern("(?i)<(script|foreignObject|image|use|a|iframe)[ >]")
            .doesNotContainPattern("(?i)(href|src)=\"(?!#)")
            .doesNotContainPattern("(?i) on[a-z]+=\"")
            .doesNotContainPattern("(?i)url\\((?!#|data:|'data:|\"data:|&quot;data:)")
            .doesNotContain("<!ENTITY");
      }
    }
  }

  @Test
  void no_cell_of_a_csv_file_is_a_formula() throws Exception {
    Workplace place = Workplace.withMadeDemo(folder);
    try (Stream<Path> all = Files.walk(place.path("reports"))) {
      List<Path> tables = all.filter(p -> p.toString().endsWith(".csv")).toList();
      assertThat(tables).isNotEmpty();
      for (Path table : tables) {
        // A minus sign may precede a number; other first characters of formulas are not allowed.
        assertThat(Files.readString(table))
            .as(table.toString())
            .doesNotContainPattern("(?m)(^|,)\"?[=+@\t]")
            .doesNotContainPattern("(?m)(^|,)\"?-(?![0-9.])");
      }
    }
  }

  /** Every HTML, CSS, SVG, and XML construct that references an external resource. */
  private void insertReferences(String url, Path secret, String templateName) throws IOException {
    String file = secret.toUri().toString();
    StringBuilder ways = new StringBuilder();
    for (String to : List.of(url, file)) {
      ways.append("<img src=\"" + to + ".png\" alt=\"x\"/>")
          .append("<iframe src=\"" + to + "\"></iframe>")
          .append("<object data=\"" + to + "\"></object><embed src=\"" + to + "\"/>")
          .append("<link rel=\"stylesheet\" href=\"" + to + ".css\"/>")
          .append("<style>@import url('" + to + "'); p { background: url('" + to + "') }")
          .append("@font-face { font-family: x; src: url('" + to + "') } p { font-family: x }")
          .append("</style><p style=\"background: url('" + to + "')\">way</p>")
          .append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"9\" height=\"9\"")
          .append(" xmlns:xlink=\"http://www.w3.org/1999/xlink\">")
          .append("<image width=\"9\" height=\"9\" xlink:href=\"" + to + "\"/>")
          .append("<use xlink:href=\"" + to + "#a\"/></svg>")
          .append("<script src=\"" + to + "\"></script>");
    }
    String template = Files.readString(Path.of("templates", templateName));
    int end = template.indexOf("</body>");
    assertThat(end).isPositive();
    Files.createDirectories(folder.resolve("templates"));
    Files.writeString(
        folder.resolve("templates").resolve(templateName),
        template.substring(0, end) + ways + template.substring(end));
    String article =
        "\n\n<!DOCTYPE r [<!ENTITY e SYSTEM \""
            + file
            + "\">]>\n\n&e;\n\n![p]("
            + url
            + ")\n\n"
            + ways;
    Path look = folder.resolve("reports/look.md");
    Files.writeString(look, Files.readString(look) + article);
  }

  private static ServerSocket listener(AtomicInteger connections, AtomicInteger sent)
      throws IOException {
    ServerSocket web = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
    Thread ear =
        new Thread(
            () -> {
              while (!web.isClosed()) {
                try (Socket connection = web.accept()) {
                  connections.incrementAndGet();
                  if (connection.getInputStream().read() >= 0) {
                    sent.incrementAndGet();
                  }
                  connection.shutdownOutput();
                } catch (IOException e) {
                  return;
                }
              }
            });
    ear.setDaemon(true);
    ear.start();
    return web;
  }

  private void open(Path page) throws Exception {
    String dom = new Browser(folder, 60).shown(page);
    assertThat(dom).contains("peaked").doesNotContain(SECRET);
  }

  private void copyValid() throws IOException {
    Workplace.copy(CorpusFile.FOLDER.resolve("valid"), folder);
  }
}
