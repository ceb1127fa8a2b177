package taperbook.endtoend;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.parser.Parser;

/** What a reader reads in the files of a report, without code, ids and data. */
final class PublishedTexts {
  /** The members of JSON files that are sentences or labels. */
  private static final Set<String> READ =
      Set.of(
          "label",
          "title",
          "caveats",
          "withheld",
          "source",
          "sentence",
          "arguments",
          "description");

  private PublishedTexts() {}

  /** Returns the texts of every file below a folder by its path. */
  static SortedMap<String, String> of(Path folder) throws IOException {
    SortedMap<String, String> texts = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        String name = folder.relativize(file).toString();
        if (!name.contains("data/") && !name.startsWith(".")) {
          texts.put(name, text(file));
        }
      }
    }
    return texts;
  }

  private static String text(Path file) throws IOException {
    String name = file.toString();
    return switch (name.substring(name.lastIndexOf('.') + 1)) {
      case "html" -> html(Jsoup.parse(Files.readString(file)));
      case "svg" -> svg(Jsoup.parse(Files.readString(file), "", Parser.xmlParser()));
      case "pdf" -> pdf(file);
      case "json" -> json("", new ObjectMapper().readTree(file.toFile()));
      case "md", "srt" -> Files.readString(file);
      default -> "";
    };
  }

  private static String html(Document page) {
    page.select("script, style, code").remove();
    return Stream.concat(
            page.nodeStream(org.jsoup.nodes.TextNode.class).map(node -> node.text()),
            Stream.of("title", "alt", "aria-label")
                .flatMap(
                    name ->
                        page.select("[" + name + "]").stream().map(element -> element.attr(name))))
        .collect(Collectors.joining(" | "));
  }

  private static String svg(Document picture) {
    return picture.select("title, desc, text").stream()
        .map(element -> element.text())
        .collect(Collectors.joining(" | "));
  }

  static String pdf(Path file) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
      return new PDFTextStripper().getText(pdf);
    }
  }

  private static String json(String name, JsonNode node) {
    if (node.isTextual()) {
      return READ.contains(name) ? node.textValue() + " | " : "";
    }
    if (node.isArray()) {
      StringBuilder all = new StringBuilder();
      node.forEach(each -> all.append(json(name, each)));
      return all.toString();
    }
    return node.properties().stream()
        .map(member -> json(member.getKey(), member.getValue()))
        .collect(Collectors.joining());
  }
}
