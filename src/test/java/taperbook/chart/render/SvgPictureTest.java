package taperbook.chart.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import taperbook.chart.plots.ChartPictures;
import taperbook.chart.plots.FigureSet;
import taperbook.chart.plots.InventedSession;

@Tag("slow")
final class SvgPictureTest {
  static Stream<Map.Entry<String, List<Draft>>> drawn() {
    return ChartPictures.drafts().entrySet().stream();
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void the_picture_is_well_formed_and_standalone(Map.Entry<String, List<Draft>> drawn)
      throws Exception {
    for (Draft figure : drawn.getValue()) {
      String svg = svg(figure);
      assertThat(svg).startsWith("<svg ").doesNotContain("<!").doesNotContain("<?");
      Document document = parse(svg);
      Element root = document.getDocumentElement();
      assertThat(root.getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
      assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 720 405");
      assertThat(root.getAttribute("role")).isEqualTo("img");
      assertThat(root.hasAttribute("width") || root.hasAttribute("height")).isFalse();
      List<Element> all = elements(document, "*");
      assertThat(all.get(1).getTagName()).isEqualTo("title");
      assertThat(all.get(1).getTextContent()).isEqualTo(figure.chart().title().finding());
      assertThat(all.get(2).getTagName()).isEqualTo("desc");
      assertThat(all.get(2).getTextContent()).isEqualTo(figure.textAlternative());
      assertThat(all).extracting(Element::getTagName).doesNotContain("script", "style", "image");
    }
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void no_id_occurs_twice_in_a_page_and_every_reference_is_met(Map.Entry<String, List<Draft>> drawn)
      throws Exception {
    Set<String> ids = new HashSet<>();
    Set<String> used = new HashSet<>();
    for (Draft figure : drawn.getValue()) {
      for (Element element : elements(parse(svg(figure)), "*")) {
        String id = element.getAttribute("id");
        if (!id.isEmpty()) {
          assertThat(id).startsWith(figure.chart().id() + "-");
          assertThat(ids.add(id)).as(id).isTrue();
        }
      }
      Matcher reference = Pattern.compile("url\\(#([^)]+)\\)").matcher(svg(figure));
      while (reference.find()) {
        used.add(reference.group(1));
      }
    }
    assertThat(ids).containsAll(used);
  }

  @Test
  void each_wide_gap_is_a_separate_dashed_line() throws Exception {
    // Gaps of this session: 210 s, 140 s, 130 s, and shorter ones.
    assertThat(dashedJoins(InventedSession.handRead().wideGapSeconds(210))).isEqualTo(1);
    assertThat(dashedJoins(InventedSession.handRead().wideGapSeconds(130))).isEqualTo(3);
    assertThat(dashedJoins(InventedSession.handRead().wideGapSeconds(1000))).isZero();
    assertThat(dashedJoins(InventedSession.handRead().wideGapSeconds(0))).isEqualTo(20);
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void lines_of_equal_style_are_joined_if_they_are_solid_or_shorter_than_a_dash(
      Map.Entry<String, List<Draft>> drawn) throws Exception {
    for (Draft figure : drawn.getValue()) {
      for (Element path : elements(parse(svg(figure)), "path")) {
        // A line across a gap is thinner than the line of the session, whose dash pattern
        // continues.
        if (own(path, "stroke-dasharray").contains(",")
            && !own(path, "stroke-width").equals("2.4")) {
          assertThat(longestPiece(path)).isLessThan(4.2);
        }
      }
    }
  }

  /** The attribute of an element or of its group. */
  private static String own(Element element, String name) {
    return element.hasAttribute(name)
        ? element.getAttribute(name)
        : ((Element) element.getParentNode()).getAttribute(name);
  }

  private static double longestPiece(Element path) {
    String data = path.getAttribute("d");
    String[] numbers = data.substring(data.indexOf('l') + 1).split("[ z]+", -1);
    double longest = 0;
    for (int i = 0; i + 1 < numbers.length; i += 2) {
      double across = Double.parseDouble(numbers[i]);
      longest = Math.max(longest, Math.hypot(across, Double.parseDouble(numbers[i + 1])));
    }
    return longest;
  }

  @Test
  void relative_corners_lead_to_the_absolute_positions() {
    assertThat(SvgCompactor.relative("M1.5 2 L3 2.5 L3 0 Z M10 10 L9.9 10"))
        .isEqualTo("m1.5 2l1.5 0.5 0 -2.5zm8.5 8l-0.1 0");
    assertThat(SvgCompactor.relative("M0 0 C1 1 2 2 3 3")).isEqualTo("M0 0 C1 1 2 2 3 3");
  }

  @Test
  void hand_read_points_are_dots_and_a_dense_line_has_none() throws Exception {
    assertThat(readings(InventedSession.handRead())).isEqualTo(21);
    assertThat(readings(InventedSession.logger())).isZero();
  }

  @Test
  void a_dense_session_stays_small() {
    for (Draft figure : FigureSet.drafts(InventedSession.logger().result())) {
      assertThat(svg(figure).length()).isLessThan(60_000);
    }
  }

  @Test
  void texts_are_text_elements_of_at_least_eight_points_in_print() throws Exception {
    // At the minimum print width of 150 mm for 720 units, a unit is 150 / 720 / 25.4 * 72 = 0.59
    // pt.
    for (Draft figure : FigureSet.drafts(InventedSession.handRead().result())) {
      List<Element> texts = elements(parse(svg(figure)), "text");
      assertThat(texts).hasSizeGreaterThan(10);
      for (Element text : texts) {
        double points = Double.parseDouble(text.getAttribute("font-size")) * 0.59;
        assertThat(points).isGreaterThanOrEqualTo(8);
      }
    }
  }

  @Test
  void numbers_have_at_most_two_decimals() {
    for (Draft figure : FigureSet.drafts(InventedSession.handRead().result())) {
      String shapes = svg(figure).substring(svg(figure).indexOf("</desc>"));
      assertThat(shapes).doesNotContainPattern("\\d\\.\\d{3}");
    }
  }

  private static String svg(Draft draft) {
    return SvgPicture.write(draft.chart(), draft.textAlternative());
  }

  private static int dashedJoins(InventedSession session) throws Exception {
    String dash = dash();
    int count = 0;
    for (Element line : elements(powerOverSoc(session), "line")) {
      count +=
          ((Element) line.getParentNode()).getAttribute("stroke-dasharray").equals(dash) ? 1 : 0;
    }
    return count;
  }

  private static int readings(InventedSession session) throws Exception {
    int count = 0;
    for (Element circle : elements(powerOverSoc(session), "circle")) {
      count += circle.getAttribute("r").equals("3.1") ? 1 : 0;
    }
    return count;
  }

  /** The dash of lines across gaps: three widths of the curve on, two off. */
  private static String dash() {
    return "7.2,4.8";
  }

  private static Document powerOverSoc(InventedSession session) throws Exception {
    return parse(svg(FigureSet.drafts(session.result()).get(0)));
  }

  private static List<Element> elements(Document document, String name) {
    NodeList nodes = document.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  private static Document parse(String xml) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory.newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
  }
}
