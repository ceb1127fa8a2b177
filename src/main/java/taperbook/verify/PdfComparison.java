package taperbook.verify;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import taperbook.i18n.Texts;
import taperbook.session.InputFile;

/**
 * Compares the objects of two PDFs, from the trailer down and page by page, and the text of those
 * pages that differ. It shows a reader where to look but proves nothing: the proof is {@link
 * CanonicalPdf}.
 *
 * <p>Uses an explicit stack, because a file of any origin may be nested without limit.
 */
public final class PdfComparison {
  /** Maximum number of objects that are compared. */
  static final int MAX_OBJECTS = 2_000_000;

  /**
   * Maximum number of lines reported per page, so that a page with a new layout does not fill the
   * screen.
   */
  private static final int MAX_LINES = 3;

  /** Trailer entries that describe where objects are. */
  private static final Set<String> PACKING =
      Set.of("Size", "Prev", "W", "Index", "Length", "Filter", "Type", "XRefStm", "DecodeParms");

  private final PDDocument carried;
  private final PDDocument recomputed;
  private final BoundedDecoder decoded = new BoundedDecoder();
  private final IdentityHashMap<COSBase, Integer> carriedPages = new IdentityHashMap<>();
  private final IdentityHashMap<COSBase, Integer> recomputedPages = new IdentityHashMap<>();
  private final Map<Pair, Difference> objects = new LinkedHashMap<>();
  private final Map<Pair, Boolean> streams = new LinkedHashMap<>();
  private final Set<Pair> compared = new HashSet<>();
  private final SortedSet<Integer> pages = new TreeSet<>();
  private final List<Difference> texts = new ArrayList<>();
  private boolean whole = true;

  private PdfComparison(PDDocument carried, PDDocument recomputed) {
    this.carried = carried;
    this.recomputed = recomputed;
  }

  /**
   * The result of a comparison.
   *
   * @param layout how far the files are the same
   * @param objects the objects that differ
   * @param pages numbers of the pages, from 1, that use one of them
   * @param texts the first lines that differ on these pages
   * @param compared number of objects that were compared
   * @param whole false if there are more objects than are compared
   */
  public record Found(
      Layout layout,
      List<Difference> objects,
      SortedSet<Integer> pages,
      List<Difference> texts,
      int compared,
      boolean whole) {
    public Found {
      objects = List.copyOf(objects);
      texts = List.copyOf(texts);
    }
  }

  /** How far two files are the same. */
  public enum Layout {
    /** Identical bytes. */
    SAME_BYTES,
    /** Identical canonical form: only the deflation of their streams differs. */
    SAME_FORM,
    /** Different, or equal only as one reader interprets them. */
    OTHER
  }

  /**
   * Compares a file of any origin with the one that follows from its embedded inputs.
   *
   * @throws IOException if it cannot be read
   */
  public static Found of(byte[] carried, byte[] recomputed) throws IOException {
    if (CanonicalPdf.isSame(carried, recomputed)) {
      Layout layout = Arrays.equals(carried, recomputed) ? Layout.SAME_BYTES : Layout.SAME_FORM;
      return new Found(layout, List.of(), new TreeSet<>(), List.of(), 0, true);
    }
    try (PDDocument one = Loader.loadPDF(carried);
        PDDocument other = Loader.loadPDF(recomputed)) {
      return new PdfComparison(one, other).found();
    } catch (RuntimeException | StackOverflowError e) {
      // The library can throw any exception for a damaged PDF.
      throw new IOException(Texts.of("verify.common.damaged_pdf"), e);
    }
  }

  private Found found() throws IOException {
    name(carried, carriedPages);
    name(recomputed, recomputedPages);
    int both = Math.min(carriedPages.size(), recomputedPages.size());
    for (int page = 1; page <= both; page++) {
      COSBase one = carried.getPage(page - 1).getCOSObject();
      COSBase other = recomputed.getPage(page - 1).getCOSObject();
      if (walk(
          new Step(one, other, Texts.of("verify.pdf_comparison.page", page), new Pair(one, other)),
          true)) {
        pages.add(page);
      }
    }
    COSBase one = carried.getDocument().getTrailer();
    COSBase other = recomputed.getDocument().getTrailer();
    walk(new Step(one, other, "trailer", new Pair(one, other)), false);
    texts(carriedPages.size(), recomputedPages.size());
    return new Found(
        Layout.OTHER, List.copyOf(objects.values()), pages, texts, compared.size(), whole);
  }

  private static void name(PDDocument document, IdentityHashMap<COSBase, Integer> pages)
      throws IOException {
    int count = document.getNumberOfPages();
    if (count > ReportPdfReader.MAX_PAGES) {
      throw new IOException(Texts.of("verify.pdf_comparison.pdf_of_pages", count));
    }
    for (int i = 0; i < count; i++) {
      pages.put(document.getPage(i).getCOSObject(), i + 1);
    }
  }

  /** Two objects at the same place; equal by identity. */
  private record Pair(COSBase one, COSBase other) {
    @Override
    public boolean equals(Object o) {
      return o instanceof Pair pair && pair.one == one && pair.other == other;
    }

    @Override
    public int hashCode() {
      return 31 * System.identityHashCode(one) + System.identityHashCode(other);
    }
  }

  /** Two objects to compare, a description of their place, and the object that they are part of. */
  private record Step(COSBase one, COSBase other, String place, Pair within) {
    Step to(COSBase nextOne, COSBase nextOther, String name) {
      COSBase a = resolved(nextOne);
      COSBase b = resolved(nextOther);
      boolean own = nextOne instanceof COSObject || nextOther instanceof COSObject;
      return new Step(a, b, place + ", " + name, own ? new Pair(a, b) : within);
    }
  }

  /** Returns true if anything below differs. */
  private boolean walk(Step top, boolean ofPage) throws IOException {
    boolean differs = false;
    Set<Pair> met = new HashSet<>();
    Deque<Step> steps = new ArrayDeque<>(List.of(top));
    boolean atTop = true;
    while (!steps.isEmpty()) {
      Step step = steps.pop();
      if (compared.size() >= MAX_OBJECTS || Thread.currentThread().isInterrupted()) {
        whole = false;
        return differs;
      }
      boolean inside = atTop || !isPage(step);
      if (!inside || !(step.one() instanceof COSDictionary || step.one() instanceof COSArray)) {
        differs |= !isSame(step, inside);
      } else if (met.add(new Pair(step.one(), step.other()))) {
        compared.add(step.within());
        differs |= !isSameInside(step, steps, atTop && ofPage);
      }
      atTop = false;
    }
    return differs;
  }

  private boolean isPage(Step step) {
    return carriedPages.containsKey(step.one()) || recomputedPages.containsKey(step.other());
  }

  private boolean isSame(Step step, boolean inside) {
    boolean same =
        inside
            ? PdfObjectText.of(step.one()).equals(PdfObjectText.of(step.other()))
            : carriedPages
                .getOrDefault(step.one(), 0)
                .equals(recomputedPages.getOrDefault(step.other(), 0));
    return same || differ(step, PdfObjectText.of(step.one()), PdfObjectText.of(step.other()));
  }

  private boolean isSameInside(Step step, Deque<Step> steps, boolean ofPage) throws IOException {
    if (step.one() instanceof COSArray one && step.other() instanceof COSArray other) {
      if (one.size() != other.size()) {
        return differ(step, PdfObjectText.of(one), PdfObjectText.of(other));
      }
      for (int i = one.size() - 1; i >= 0; i--) {
        steps.push(step.to(orNull(one.get(i)), orNull(other.get(i)), String.valueOf(i + 1)));
      }
      return true;
    }
    boolean kinds = step.one() instanceof COSStream == step.other() instanceof COSStream;
    if (!kinds
        || !(step.one() instanceof COSDictionary one)
        || !(step.other() instanceof COSDictionary other)) {
      return differ(step, PdfObjectText.of(step.one()), PdfObjectText.of(step.other()));
    }
    SortedSet<String> keys = new TreeSet<>();
    one.keySet().forEach(k -> keys.add(k.getName()));
    other.keySet().forEach(k -> keys.add(k.getName()));
    for (String key : keys) {
      COSName name = COSName.getPDFName(key);
      // The page tree is compared from the trailer down, and a length through its content.
      boolean elsewhere =
          (ofPage && name.equals(COSName.PARENT))
              || (one instanceof COSStream && name.equals(COSName.LENGTH))
              || (step.place().equals("trailer") && PACKING.contains(key));
      if (!elsewhere) {
        steps.push(step.to(orNull(one.getItem(name)), orNull(other.getItem(name)), key));
      }
    }
    return !(one instanceof COSStream a && other instanceof COSStream b)
        || streams.computeIfAbsent(new Pair(a, b), pair -> false)
        || isSameStream(step, a, b);
  }

  private boolean isSameStream(Step step, COSStream one, COSStream other) throws IOException {
    byte[] carriedBytes = decoded.bytes(one);
    byte[] recomputedBytes = decoded.bytes(other);
    boolean same = Arrays.equals(carriedBytes, recomputedBytes);
    streams.put(new Pair(one, other), same);
    return same || differ(step, PdfObjectText.of(carriedBytes), PdfObjectText.of(recomputedBytes));
  }

  /** Adds a difference, once for each object, and returns false. */
  private boolean differ(Step step, String one, String other) {
    objects.putIfAbsent(
        step.within(), new Difference(Difference.Kind.OBJECT, step.place(), one, other));
    return false;
  }

  private void texts(int carriedCount, int recomputedCount) throws IOException {
    PageText one = new PageText(carried);
    PageText other = new PageText(recomputed);
    for (int page = 1; page <= Math.max(carriedCount, recomputedCount); page++) {
      if (page > carriedCount || page > recomputedCount) {
        pages.add(page);
        texts.add(
            new Difference(
                Difference.Kind.TEXT,
                Texts.of("verify.pdf_comparison.page", page),
                page > carriedCount
                    ? Texts.of("verify.pdf_comparison.no_such_page")
                    : Texts.of("verify.pdf_comparison.a_page"),
                page > recomputedCount
                    ? Texts.of("verify.pdf_comparison.no_such_page")
                    : Texts.of("verify.pdf_comparison.a_page")));
      } else if (pages.contains(page)) {
        lines(page, one.lines(page), other.lines(page));
      }
    }
  }

  private void lines(int page, List<String> one, List<String> other) {
    int reported = 0;
    for (int i = 0; i < Math.max(one.size(), other.size()) && reported < MAX_LINES; i++) {
      String a = i < one.size() ? one.get(i) : Texts.of("verify.pdf_comparison.nothing");
      String b = i < other.size() ? other.get(i) : Texts.of("verify.pdf_comparison.nothing");
      if (!a.equals(b)) {
        String place = Texts.of("verify.pdf_comparison.page_line", page, i + 1);
        texts.add(new Difference(Difference.Kind.TEXT, place, a, b));
        reported++;
      }
    }
  }

  private static COSBase orNull(COSBase value) {
    return value == null ? COSNull.NULL : value;
  }

  private static COSBase resolved(COSBase reference) {
    return reference instanceof COSObject object ? orNull(object.getObject()) : reference;
  }

  /** Describes objects of a PDF without their children. */
  private static final class PdfObjectText {
    private static final int SHOWN_DIGITS = 16;

    private PdfObjectText() {}

    /** Describes the content of a stream. */
    static String of(byte[] content) {
      return Texts.of(
          "verify.pdf_object_text.stream_of_bytes_sha_256",
          content.length,
          new InputFile("stream", content).sha256().substring(0, SHOWN_DIGITS));
    }

    /** Describes an object; equal plain objects have equal descriptions. */
    static String of(COSBase object) {
      if (object instanceof COSString string) {
        return Texts.of("verify.pdf_object_text.string", string.toHexString());
      }
      if (object instanceof COSName name) {
        return Texts.of("verify.pdf_object_text.name", name.getName());
      }
      if (object instanceof COSInteger integer) {
        return Texts.of("verify.pdf_object_text.number", integer.longValue());
      }
      if (object instanceof COSFloat real) {
        return Texts.of("verify.pdf_object_text.number", real.floatValue());
      }
      if (object instanceof COSArray array) {
        return Texts.of("verify.pdf_object_text.array_of", array.size());
      }
      if (object instanceof COSStream) {
        return Texts.of("verify.pdf_object_text.a_stream");
      }
      if (object instanceof COSDictionary dictionary) {
        return Texts.of("verify.pdf_object_text.dictionary_of", dictionary.size());
      }
      return object == COSNull.NULL
          ? Texts.of("verify.pdf_object_text.nothing")
          : String.valueOf(object);
    }
  }
}
