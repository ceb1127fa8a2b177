package taperbook.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Checks the demo's pages with axe-core in a browser: WCAG 2.2 A and AA, and best practices. The
 * script is not part of the project; {@code .ci/run} downloads it to {@code target}.
 *
 * @see <a href="https://www.npmjs.com/package/axe-core">axe-core</a>
 */
@Tag("slow")
final class AccessibilityTest {
  private static final Path RULES = Path.of("target/axe/package/axe.min.js");

  /** Runs the rules in a frame of the given width and leaves the violations as text. */
  private static final String FRAME =
      """
      <!DOCTYPE html><html lang="en"><title>frame</title><body><pre id="found"></pre>
      <iframe id="page" style="width:{width}px;height:900px;border:0"></iframe>
      <script>
      const text = b => new TextDecoder().decode(Uint8Array.from(atob(b), c => c.charCodeAt(0)));
      const frame = document.getElementById('page');
      frame.onload = async () => {
        const page = frame.contentWindow;
        if ('{sections}' === 'open') {
          page.document.querySelectorAll('details').forEach(d => d.open = true);
          page.document.querySelectorAll('td a.value').forEach((a, i) => i % 9 || a.click());
        }
        page.eval(text('{rules}'));
        const told = await page.axe.run({runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa',
          'wcag22aa', 'best-practice']});
        document.getElementById('found').textContent = 'rules kept: ' + told.passes.length + ';'
          + told.violations.map(v => v.id + ' at ' + v.nodes[0].html).join('; ');
      };
      frame.srcdoc = text('{page}');
      </script></body></html>
      """;

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    "finch-first-look, 360, light, closed",
    "finch-first-look, 768, dark, open",
    "finch-first-look, 1440, dark, closed",
    "library, 360, dark, closed",
    "library, 1440, light, open"
  })
  void a_page_violates_no_accessibility_rule(
      String report, int width, String scheme, String sections) throws Exception {
    assumeTrue(Files.exists(RULES), "axe-core is not in target/axe; .ci/run fetches it");
    String page = Files.readString(Path.of("reports", report, "report.html"));
    // Without the content security policy, so that the rules can run, and without the shadows of
    // scrollable tables, over which axe-core cannot compute contrast.
    Document document = Jsoup.parse(page);
    document.select("meta[http-equiv]").remove();
    document.head().append("<style>.scroll{background:none!important}</style>");
    Path frame = folder.resolve("frame.html");
    Files.writeString(
        frame,
        FRAME
            .replace("{width}", String.valueOf(width))
            .replace("{sections}", sections)
            .replace("{rules}", base64(Files.readString(RULES)))
            .replace("{page}", base64(document.outerHtml())));

    String found = Jsoup.parse(shown(frame, scheme)).select("#found").text();

    assertThat(found).matches("rules kept: [2-9][0-9];");
  }

  private String shown(Path frame, String scheme) throws Exception {
    return new Browser(folder, 120)
        .shown(
            frame,
            "--blink-settings=preferredColorScheme=" + (scheme.equals("dark") ? 0 : 1),
            "--window-size=1600,1000",
            "--virtual-time-budget=120000");
  }

  private static String base64(String text) {
    return Base64.getEncoder().encodeToString(text.getBytes(StandardCharsets.UTF_8));
  }
}
