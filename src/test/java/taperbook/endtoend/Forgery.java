package taperbook.endtoend;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;

/**
 * Changes that make a published PDF show something that does not follow from its inputs. Each
 * starts with the published bytes and requires no more than a text editor.
 */
enum Forgery {
  /** Readers differ in which end of cross-references they use. */
  TWO_ENDS_OF_CROSS_REFERENCES(
      pdf -> {
        String update = update(pdf, "");
        int start = pdf.length + update.indexOf("xref\n");
        return joined(pdf, text(update + "startxref\n" + start + "\n"));
      }),
  UPDATE_WITH_ANOTHER_PAGE_1(
      pdf -> {
        String update = update(pdf, "");
        int start = pdf.length + update.indexOf("xref\n");
        return joined(pdf, text(update + "startxref\n" + start + "\n%%EOF\n"));
      }),
  UPDATE_WITHOUT_CROSS_REFERENCES(pdf -> joined(pdf, text(update(pdf, "")))),
  EMPTY_UPDATE(pdf -> joined(pdf, text("startxref\n" + Target.of(pdf).start + "\n%%EOF\n"))),
  BYTES_BEHIND_THE_END(pdf -> joined(pdf, text("% behind the end\n"))),
  BYTES_BEFORE_THE_HEADER(pdf -> joined(text("a line before the header\n"), pdf)),
  ANOTHER_HEADER(pdf -> changed(pdf, "%PDF-1.6", "%PDF-1.3")),
  COMMENT_BETWEEN_OBJECTS(
      pdf -> {
        Target target = Target.of(pdf);
        return joined(
            Arrays.copyOf(pdf, target.start),
            text("% 423 kW\n"),
            Arrays.copyOfRange(pdf, target.start, pdf.length));
      }),
  OBJECT_TWICE(
      pdf -> {
        Target target = Target.of(pdf);
        byte[] again =
            text(target.page + " 0 obj\n" + forgedPage(target, target.content) + "\nendobj\n");
        String end = "startxref\n" + (target.start + again.length) + "\n%%EOF\n";
        String tail = new String(pdf, target.start, pdf.length - target.start, ISO_8859_1);
        return joined(
            Arrays.copyOf(pdf, target.start),
            again,
            text(tail.substring(0, tail.lastIndexOf("startxref")) + end));
      }),
  CROSS_REFERENCES_BESIDE_THEIR_PLACE(
      pdf -> {
        Target target = Target.of(pdf);
        return changed(pdf, "startxref\n" + target.start, "startxref\n" + (target.start + 3));
      }),
  PAGE_WITHOUT_TYPE_UNDER_A_COUNT_OF_0(
      (pdf, target, objects) -> {
        int content = objects.add("", text(Shown.TEXT));
        return objects
            .edit(
                target.pages,
                t ->
                    t.replaceFirst(
                        "/Kids \\[",
                        "/Kids [<</Type /Pages /Count 0 /Parent "
                            + target.pages
                            + " 0 R /Kids [<</Parent "
                            + target.pages
                            + " 0 R /MediaBox [0 0 595 842] /Resources "
                            + Shown.FONT
                            + " /Contents "
                            + content
                            + " 0 R>>]>> "))
            .bytes();
      }),
  CROP_BOX_INHERITED(
      (pdf, target, objects) ->
          objects.edit(target.pages, t -> with(t, "/CropBox [0 600 595 842]")).bytes()),
  CROP_BOX(
      (pdf, target, objects) ->
          objects.edit(target.page, t -> with(t, "/CropBox [0 600 595 842]")).bytes()),
  MEDIA_BOX(
      (pdf, target, objects) ->
          objects
              .edit(
                  target.page,
                  t -> t.replaceFirst("/MediaBox \\[[^\\]]*\\]", "/MediaBox [0 0 595 500]"))
              .bytes()),
  ROTATED_INHERITED(
      (pdf, target, objects) -> objects.edit(target.pages, t -> with(t, "/Rotate 180")).bytes()),
  USER_UNIT(
      (pdf, target, objects) -> objects.edit(target.page, t -> with(t, "/UserUnit 5")).bytes()),
  CONTENT_APPENDED(
      (pdf, target, objects) ->
          objects.content(target.content, c -> joined(c, text("\n0 0 300 300 re f\n"))).bytes()),
  CONTENT_IN_A_SECOND_STREAM(
      (pdf, target, objects) -> {
        int more = objects.add("", text(Shown.TEXT));
        return objects.edit(target.page, t -> twoContents(t, more)).bytes();
      }),
  GLYPHS_SWAPPED(
      (pdf, target, objects) -> objects.content(target.content, c -> swappedGlyphs(c)).bytes()),
  ANNOTATION_WITH_AN_APPEARANCE(
      (pdf, target, objects) -> {
        int look =
            objects.add(
                "/Type /XObject /Subtype /Form /BBox [0 0 500 200] /Resources " + Shown.FONT,
                text("1 g 0 0 500 200 re f 0 g " + Shown.TEXT));
        return objects
            .edit(
                target.page,
                t ->
                    with(
                        t.replaceFirst("/Annots \\[[^\\]]*\\]|/Annots \\d+ 0 R", ""),
                        "/Annots [<</Type /Annot /Subtype /Stamp /F 4 /Rect [50 500 550 700] /AP"
                            + " <</N "
                            + look
                            + " 0 R>>>>]"))
            .bytes();
      }),
  OPTIONAL_CONTENT(
      (pdf, target, objects) ->
          objects
              .edit(1, t -> with(t, "/OCProperties <</OCGs [] /D <</Order [] /ON [] /OFF []>>>>"))
              .bytes()),
  OPEN_ACTION(
      (pdf, target, objects) ->
          objects
              .edit(1, t -> with(t, "/OpenAction [" + target.page + " 0 R /XYZ 0 0 8]"))
              .bytes()),
  SCRIPT_WHEN_OPENED(
      (pdf, target, objects) ->
          objects
              .edit(1, t -> with(t, "/OpenAction <</S /JavaScript /JS (app.alert\\('423 kW'\\))>>"))
              .bytes()),
  PAGE_LABELS(
      (pdf, target, objects) ->
          objects.edit(1, t -> with(t, "/PageLabels <</Nums [0 <</P (423 kW )>>]>>")).bytes()),
  VIEWER_PREFERENCES(
      (pdf, target, objects) ->
          objects
              .edit(
                  1, t -> t.replaceFirst("/ViewerPreferences \\d+ 0 R", "/ViewerPreferences <<>>"))
              .bytes()),
  NAMES(
      (pdf, target, objects) ->
          objects.edit(1, t -> with(t, "/Dests <</all [" + target.page + " 0 R /Fit]>>")).bytes()),
  TITLE(
      (pdf, target, objects) ->
          objects.edit(2, t -> t.replaceFirst("/Title \\([^)]*\\)", "/Title (423 kW)")).bytes()),
  METADATA(
      (pdf, target, objects) ->
          objects
              .content(
                  target.metadata,
                  c -> text(new String(c, ISO_8859_1).replaceFirst("Short", "Sh0rt")))
              .bytes()),
  IDENTIFIER(
      pdf -> {
        String all = new String(pdf, ISO_8859_1);
        int at = all.lastIndexOf("/ID [<") + 6;
        byte[] other = pdf.clone();
        other[at] = (byte) (other[at] == '0' ? '1' : '0');
        return other;
      }),
  OUTLINE(
      (pdf, target, objects) ->
          objects.edit(1, t -> t.replaceFirst("/Outlines \\d+ 0 R\n", "")).bytes()),
  STRUCTURE(
      (pdf, target, objects) ->
          objects.edit(1, t -> t.replaceFirst("/StructTreeRoot \\d+ 0 R\n", "")).bytes()),
  FONT_UNDER_ANOTHER_FILTER(
      (pdf, target, objects) -> {
        byte[] plain = objects.contentOf(target.font);
        return objects
            .edit(target.font, t -> t.replace("/FlateDecode", "/ASCIIHexDecode"))
            .packed(target.font, p -> plain)
            .bytes();
      }),
  CONTENT_WITH_A_PREDICTOR(
      (pdf, target, objects) ->
          objects
              .edit(
                  target.content,
                  t ->
                      t.replace(
                          "/Filter /FlateDecode",
                          "/Filter /FlateDecode\n/DecodeParms <</Predictor 12 /Columns 4>>"))
              .bytes()),
  FONT_SHAPES(
      (pdf, target, objects) ->
          objects
              .content(
                  target.font,
                  c -> {
                    byte[] other = c.clone();
                    other[other.length / 2] ^= 1;
                    return other;
                  })
              .bytes()),
  FONT_WIDTHS(
      (pdf, target, objects) -> objects.edit(target.fontDictionary, t -> with(t, "/DW 5")).bytes()),
  WHAT_GLYPHS_ARE_READ_AS(
      (pdf, target, objects) ->
          objects
              .content(
                  target.toUnicode,
                  c ->
                      text(
                          new String(c, ISO_8859_1)
                              .replaceFirst("<0031>", "<0034>")
                              .replaceFirst("endcmap", "% 423 kW\nendcmap")))
              .bytes()),
  COLOUR_PROFILE(
      (pdf, target, objects) ->
          objects
              .content(
                  target.profile,
                  c -> {
                    byte[] other = c.clone();
                    other[other.length - 9] ^= 0x40;
                    return other;
                  })
              .bytes()),
  READINGS(
      (pdf, target, objects) ->
          objects
              .content(
                  target.readings,
                  c -> text(new String(c, ISO_8859_1).replace("6:10,32,123,", "6:10,32,183,")))
              .bytes()),
  NUMBERS(
      (pdf, target, objects) ->
          objects
              .content(
                  target.numbers,
                  c ->
                      text(
                          new String(c, ISO_8859_1)
                              .replaceFirst("\"value\": 123", "\"value\": 423")))
              .bytes()),
  TYPE_OF_A_CARRIED_FILE(
      (pdf, target, objects) ->
          objects
              .edit(
                  target.readings,
                  t -> t.replaceFirst("/Subtype /[^\\s]+", "/Subtype /text#2Fhtml"))
              .bytes()),
  LENGTH_THAT_IS_TOO_LONG(
      pdf -> {
        Target target = Target.of(pdf);
        String all = new String(pdf, ISO_8859_1);
        int at = all.indexOf("\n" + target.content + " 0 obj");
        int end = all.indexOf("endobj", at);
        String object = all.substring(at, end);
        String longer = object.replaceFirst("/Length 0*(\\d+)", "/Length 0$1");
        return joined(text(all.substring(0, at)), text(longer), text(all.substring(end)));
      }),
  DEFLATED_WITH_MORE_BEHIND_IT(
      (pdf, target, objects) ->
          objects.packed(target.content, p -> joined(p, text("BT (423 kW) Tj ET"))).bytes()),
  DEFLATED_WITHOUT_ITS_CHECKSUM(
      (pdf, target, objects) ->
          objects.packed(target.content, p -> Arrays.copyOf(p, p.length - 4)).bytes()),
  CROSS_REFERENCES_TO_ANOTHER_OBJECT(
      (pdf, target, objects) -> {
        return objects.pointing(target.content, target.font).bytes();
      }),
  PACKED_BY_A_LIBRARY(pdf -> saved(pdf, document -> {})),
  ENCRYPTED(
      pdf ->
          saved(
              pdf,
              document ->
                  document.protect(
                      new StandardProtectionPolicy("owner", "", new AccessPermission())))),
  PAGE_ADDED(pdf -> saved(pdf, document -> document.importPage(document.getPage(0)))),
  PAGE_REMOVED(pdf -> saved(pdf, document -> document.removePage(document.getNumberOfPages() - 1))),
  PAGES_SWAPPED(
      pdf ->
          saved(
              pdf,
              document -> {
                COSArray kids = document.getPages().getCOSObject().getCOSArray(COSName.KIDS);
                COSBase first = kids.get(0);
                kids.set(0, kids.get(1));
                kids.set(1, first);
              }));

  /** Content of a forged page. */
  private static final class Shown {
    static final String FONT =
        "<</Font <</Fx <</Type /Font /Subtype /Type1 /BaseFont /Helvetica>>>>>>";
    static final String TEXT = "BT /Fx 24 Tf 40 60 Td (Peak power 423 kW) Tj ET";
  }

  private final UnaryOperator<byte[]> forge;

  Forgery(UnaryOperator<byte[]> forge) {
    this.forge = forge;
  }

  /** A change of objects in the layout of the program. */
  private interface Edit {
    byte[] of(byte[] pdf, Target target, PdfObjects objects);
  }

  Forgery(Edit edit) {
    this.forge = pdf -> edit.of(pdf, Target.of(pdf), PdfObjects.of(pdf));
  }

  /** The forged file. */
  byte[] of(byte[] published) {
    return forge.apply(published);
  }

  /** Number of the object that contains {@code numbers.json}. */
  static long numbersOf(byte[] published) {
    return Target.of(published).numbers;
  }

  /** Numbers of objects worth changing. */
  private record Target(
      int start,
      long pages,
      long page,
      long content,
      long metadata,
      long font,
      long fontDictionary,
      long toUnicode,
      long profile,
      long readings,
      long numbers) {
    static Target of(byte[] pdf) {
      String all = new String(pdf, ISO_8859_1);
      int at = all.lastIndexOf("startxref\n") + 10;
      int start = Integer.parseInt(all.substring(at, all.indexOf('\n', at)));
      try (PDDocument document = Loader.loadPDF(pdf)) {
        COSDictionary catalog = document.getDocumentCatalog().getCOSObject();
        COSDictionary page = document.getPage(0).getCOSObject();
        COSDictionary fonts =
            document.getPage(0).getResources().getCOSObject().getCOSDictionary(COSName.FONT);
        COSDictionary font = fonts.getCOSDictionary(fonts.keySet().iterator().next());
        COSDictionary below =
            (COSDictionary) font.getCOSArray(COSName.DESCENDANT_FONTS).getObject(0);
        COSDictionary descriptor = below.getCOSDictionary(COSName.FONT_DESC);
        COSDictionary intent =
            (COSDictionary) catalog.getCOSArray(COSName.OUTPUT_INTENTS).getObject(0);
        return new Target(
            start,
            number(catalog.getItem(COSName.PAGES)),
            number(document.getPages().getCOSObject().getCOSArray(COSName.KIDS).get(0)),
            number(page.getItem(COSName.CONTENTS)),
            number(catalog.getItem(COSName.METADATA)),
            number(descriptor.getItem(COSName.FONT_FILE2)),
            number(font.getCOSArray(COSName.DESCENDANT_FONTS).get(0)),
            number(font.getItem(COSName.TO_UNICODE)),
            number(intent.getItem(COSName.getPDFName("DestOutputProfile"))),
            number(carried(document, "sessions/finch-quarry-lane-first/readings.csv")),
            number(carried(document, "numbers.json")));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    private static COSBase carried(PDDocument document, String name) throws IOException {
      return document
          .getDocumentCatalog()
          .getNames()
          .getEmbeddedFiles()
          .getNames()
          .entrySet()
          .stream()
          .filter(e -> e.getKey().equals(name))
          .map(e -> e.getValue().getCOSObject().getCOSDictionary(COSName.EF).getItem(COSName.F))
          .findFirst()
          .orElseThrow();
    }

    private static long number(COSBase reference) {
      if (reference instanceof COSObject object) {
        return object.getKey().getNumber();
      }
      throw new IllegalArgumentException("not an object of its own: " + reference);
    }
  }

  /** A new page 1 with cross-references after the published ones, without their end. */
  private static String update(byte[] pdf, String more) {
    Target target = Target.of(pdf);
    long number = 90_000;
    StringBuilder text = new StringBuilder(more);
    int content = pdf.length + text.length();
    text.append(number)
        .append(" 0 obj\n<</Length ")
        .append(Shown.TEXT.length())
        .append(">>\nstream\n")
        .append(Shown.TEXT)
        .append("\nendstream\nendobj\n");
    int page = pdf.length + text.length();
    text.append(target.page)
        .append(" 0 obj\n")
        .append(forgedPage(target, number))
        .append("\nendobj\n");
    text.append("xref\n")
        .append(target.page)
        .append(" 1\n")
        .append(String.format("%010d 00000 n \n", page))
        .append(number)
        .append(" 1\n")
        .append(String.format("%010d 00000 n \n", content))
        .append("trailer\n<</Size 90001 /Root 1 0 R /Info 2 0 R /Prev ")
        .append(target.start)
        .append(">>\n");
    return text.toString();
  }

  private static String forgedPage(Target target, long content) {
    return "<</Type /Page /Parent "
        + target.pages
        + " 0 R /MediaBox [0 0 595 842] /Resources "
        + Shown.FONT
        + " /Contents "
        + content
        + " 0 R>>";
  }

  private static String with(String dictionary, String entry) {
    return dictionary.replaceFirst("<<", "<<\n" + Matcher.quoteReplacement(entry));
  }

  private static String twoContents(String page, int more) {
    return page.replaceFirst("/Contents (\\d+) 0 R", "/Contents [$1 0 R " + more + " 0 R]");
  }

  /** Exchanges two adjacent glyphs of the first hexadecimal or literal text. */
  private static byte[] swappedGlyphs(byte[] content) {
    String text = new String(content, ISO_8859_1);
    Matcher shown = Pattern.compile("<([0-9A-Fa-f]{4})((?!\\1)[0-9A-Fa-f]{4})").matcher(text);
    if (shown.find()) {
      return text(shown.replaceFirst("<$2$1"));
    }
    return text(text.replaceFirst(" Td", " 7 Td pop Td"));
  }

  private static byte[] text(String text) {
    return text.getBytes(ISO_8859_1);
  }

  private static byte[] joined(byte[]... parts) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    List.of(parts).forEach(out::writeBytes);
    return out.toByteArray();
  }

  private static byte[] changed(byte[] pdf, String before, String after) {
    String all = new String(pdf, ISO_8859_1);
    if (!all.contains(before)) {
      throw new IllegalArgumentException("nothing like " + before);
    }
    int at = all.lastIndexOf(before);
    return text(all.substring(0, at) + after + all.substring(at + before.length()));
  }

  private interface Change {
    void to(PDDocument document) throws IOException;
  }

  private static byte[] saved(byte[] pdf, Change change) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      change.to(document);
      document.save(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }
}
