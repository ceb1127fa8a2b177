package taperbook.chart.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.CubicCurve2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
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
  static Stream<Map.Entry<String, List<Figure>>> drawn() {
    return ChartPictures.figures().entrySet().stream();
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void the_picture_is_well_formed_and_standalone(Map.Entry<String, List<Figure>> drawn)
      throws Exception {
    for (Figure figure : drawn.getValue()) {
      String svg = figure.svg();
      assertThat(svg).startsWith("<svg ").doesNotContain("<!").doesNotContain("<?");
      Document document = parse(svg);
      Element root = document.getDocumentElement();
      assertThat(root.getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
      assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 720 405");
      assertThat(root.getAttribute("role")).isEqualTo("img");
      assertThat(root.hasAttribute("width") || root.hasAttribute("height")).isFalse();
      List<Element> all = elements(document, "*");
      assertThat(all.get(1).getTagName()).isEqualTo("title");
      assertThat(all.get(1).getTextContent()).isEqualTo(figure.title());
      assertThat(all.get(2).getTagName()).isEqualTo("desc");
      assertThat(all.get(2).getTextContent()).isEqualTo(figure.textAlternative());
      assertThat(all).extracting(Element::getTagName).doesNotContain("script", "style", "image");
    }
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void no_id_occurs_twice_in_a_page_and_every_reference_is_met(
      Map.Entry<String, List<Figure>> drawn) throws Exception {
    Set<String> ids = new HashSet<>();
    Set<String> used = new HashSet<>();
    for (Figure figure : drawn.getValue()) {
      for (Element element : elements(parse(figure.svg()), "*")) {
        String id = element.getAttribute("id");
        if (!id.isEmpty()) {
          assertThat(id).startsWith(figure.id() + "-");
          assertThat(ids.add(id)).as(id).isTrue();
        }
      }
      Matcher reference = Pattern.compile("url\\(#([^)]+)\\)").matcher(figure.svg());
      while (reference.find()) {
        used.add(reference.group(1));
      }
    }
    assertThat(ids).containsAll(used);
  }

  @Test
  void each_wide_gap_is_a_dashed_line() throws Exception {
    // Gaps of this session: 210 s, 140 s, 130 s, and shorter ones.
    assertThat(dashedJoins(InventedSession.handRead().wideGapSeconds(210))).isEqualTo(1);
    assertThat(dashedJoins(InventedSession.handRead().wideGapSeconds(130))).isEqualTo(3);
    assertThat(dashedJoins(InventedSession.handRead().wideGapSeconds(1000))).isZero();
    assertThat(dashedJoins(InventedSession.handRead().wideGapSeconds(0))).isEqualTo(20);
  }

  @Test
  void equal_strokes_are_one_path_of_relative_corners() {
    SvgGraphics g = new SvgGraphics("a");
    g.setColor(Color.BLACK);
    g.setStroke(new BasicStroke(2));
    g.draw(new Line2D.Double(1.5, 2, 3, 2.52));
    g.draw(new Line2D.Double(3, 2.52, 3, 0));
    g.draw(new Line2D.Double(10, 10, 9.9, 10));
    g.setStroke(new BasicStroke(1));
    g.draw(new CubicCurve2D.Double(0, 0, 1, 1, 2, 2, 3, 3));
    assertThat(g.svg())
        .isEqualTo(
            """
            <path d="m1.5 2l1.5 0.5 0 -2.5m7 10l-0.1 0" stroke="#000000" stroke-width="2"/>
            <path d="m0 0c1 1 2 2 3 3" stroke="#000000" stroke-width="1"/>
            """);
  }

  @Test
  void a_shape_with_an_edge_is_one_element() {
    SvgGraphics g = new SvgGraphics("a");
    for (Shape shape : List.of(new Rectangle(1, 2, 3, 4), new Ellipse2D.Double(1, 2, 6, 6))) {
      g.setColor(Color.WHITE);
      g.fill(shape);
      g.setColor(Color.BLACK);
      g.draw(shape);
    }
    assertThat(g.svg())
        .isEqualTo(
            """
            <path d="m1 2l3 0 0 4 -3 0 0 -4z" fill="#ffffff" stroke="#000000" stroke-width="1"/>
            <circle cx="4" cy="5" r="3" fill="#ffffff" stroke="#000000" stroke-width="1"/>
            """);
  }

  @Test
  void a_copy_paints_into_the_same_picture_with_its_own_origin_and_clip() {
    SvgGraphics g = new SvgGraphics("a");
    Graphics2D copy = (Graphics2D) g.create();
    copy.translate(10, 20);
    copy.setClip(new Rectangle(0, 0, 5, 5));
    copy.fill(new Rectangle(1, 1, 1, 1));
    copy.setColor(new Color(0, 0, 0, 0));
    copy.fill(new Rectangle(0, 0, 5, 5));
    assertThat(g.svg())
        .isEqualTo(
            """
            <clipPath id="a-clip0"><path d="m10 20l5 0 0 5 -5 0 0 -5z"/></clipPath>
            <path d="m11 21l1 0 0 1 -1 0 0 -1z" clip-path="url(#a-clip0)" fill="#000000"/>
            """);
  }

  @Test
  void hand_read_points_are_dots_and_a_dense_line_has_none() throws Exception {
    assertThat(readings(InventedSession.handRead())).isEqualTo(21);
    assertThat(readings(InventedSession.logger())).isZero();
  }

  @Test
  void a_dense_session_stays_small() {
    for (Figure figure : FigureSet.ofSession(InventedSession.logger().result())) {
      assertThat(figure.svg().length()).isLessThan(60_000);
    }
  }

  @Test
  void texts_are_text_elements_of_at_least_eight_points_in_print() throws Exception {
    // At the minimum print width of 150 mm for 720 units, a unit is 150 / 720 / 25.4 * 72 = 0.59
    // pt.
    for (Figure figure : FigureSet.ofSession(InventedSession.handRead().result())) {
      List<Element> texts = elements(parse(figure.svg()), "text");
      assertThat(texts).hasSizeGreaterThan(10);
      for (Element text : texts) {
        double points = Double.parseDouble(text.getAttribute("font-size")) * 0.59;
        assertThat(points).isGreaterThanOrEqualTo(8);
      }
    }
  }

  @Test
  void numbers_have_at_most_two_decimals() {
    for (Figure figure : FigureSet.ofSession(InventedSession.handRead().result())) {
      String shapes = figure.svg().substring(figure.svg().indexOf("</desc>"));
      assertThat(shapes).doesNotContainPattern("\\d\\.\\d{3}");
    }
  }

  /** The number of lines across gaps, whose dash is three widths of the curve on, two off. */
  private static int dashedJoins(InventedSession session) throws Exception {
    int count = 0;
    for (Element path : elements(powerOverSoc(session), "path")) {
      if (path.getAttribute("stroke-dasharray").equals("7.2,4.8")) {
        for (String stretch : path.getAttribute("d").substring(1).split("m", -1)) {
          count += stretch.substring(stretch.indexOf('l') + 1).split(" ", -1).length / 2;
        }
      }
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

  private static Document powerOverSoc(InventedSession session) throws Exception {
    return parse(FigureSet.ofSession(session.result()).get(0).svg());
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
