package taperbook.output.pdf;

import java.nio.charset.StandardCharsets;

/**
 * The metadata of a PDF as an XMP packet that declares PDF/A-3a and PDF/UA-1. Not written by a
 * library, so that the same document has the same bytes.
 *
 * @see <a href="https://www.iso.org/standard/57229.html">ISO 19005-3:2012, 6.6</a>
 */
final class XmpPacket {
  private XmpPacket() {}

  static byte[] bytes(PdfMetadata heading) {
    String date = heading.date() + "T00:00:00Z";
    String packet =
        "<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
            + "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n"
            + "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
            + "<rdf:Description rdf:about=\"\""
            + " xmlns:dc=\"http://purl.org/dc/elements/1.1/\""
            + " xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\""
            + " xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\""
            + " xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\""
            + " xmlns:pdfuaid=\"http://www.aiim.org/pdfua/ns/id/\""
            + " xmlns:pdfaExtension=\"http://www.aiim.org/pdfa/ns/extension/\""
            + " xmlns:pdfaSchema=\"http://www.aiim.org/pdfa/ns/schema#\""
            + " xmlns:pdfaProperty=\"http://www.aiim.org/pdfa/ns/property#\">\n"
            + "<pdfaid:part>3</pdfaid:part>\n<pdfaid:conformance>A</pdfaid:conformance>\n"
            + "<pdfuaid:part>1</pdfuaid:part>\n"
            + "<dc:format>application/pdf</dc:format>\n"
            + "<dc:language><rdf:Bag><rdf:li>en</rdf:li></rdf:Bag></dc:language>\n"
            + alternatives("dc:title", heading.title())
            + (heading.subject().isEmpty() ? "" : alternatives("dc:description", heading.subject()))
            + (heading.author().isEmpty() ? "" : creator(heading.author()))
            + element("pdf:Producer", heading.program())
            + element("xmp:CreatorTool", heading.program())
            + element("xmp:CreateDate", date)
            + element("xmp:ModifyDate", date)
            + extension()
            + "</rdf:Description>\n</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>";
    return packet.getBytes(StandardCharsets.UTF_8);
  }

  private static String element(String name, String text) {
    return "<" + name + ">" + escaped(text) + "</" + name + ">\n";
  }

  private static String alternatives(String name, String text) {
    return "<"
        + name
        + "><rdf:Alt><rdf:li xml:lang=\"x-default\">"
        + escaped(text)
        + "</rdf:li></rdf:Alt></"
        + name
        + ">\n";
  }

  private static String creator(String author) {
    return "<dc:creator><rdf:Seq><rdf:li>" + escaped(author) + "</rdf:li></rdf:Seq></dc:creator>\n";
  }

  /** Returns the schema description that PDF/A requires for properties it does not define. */
  private static String extension() {
    return "<pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType=\"Resource\">\n"
        + element("pdfaSchema:schema", "PDF/UA Universal Accessibility Schema")
        + element("pdfaSchema:namespaceURI", "http://www.aiim.org/pdfua/ns/id/")
        + element("pdfaSchema:prefix", "pdfuaid")
        + "<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType=\"Resource\">\n"
        + element("pdfaProperty:name", "part")
        + element("pdfaProperty:valueType", "Integer")
        + element("pdfaProperty:category", "internal")
        + element("pdfaProperty:description", "Part of ISO 14289 that the document follows")
        + "</rdf:li></rdf:Seq></pdfaSchema:property>\n"
        + "</rdf:li></rdf:Bag></pdfaExtension:schemas>\n";
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
