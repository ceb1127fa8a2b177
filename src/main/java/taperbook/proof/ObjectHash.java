package taperbook.proof;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HexFormat;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;

/**
 * Hashes of what the objects of a PDF say, however they are numbered and packed: two files that are
 * equal once they are unpacked have equal hashes.
 *
 * <p>Walks with a stack of its own, since a file from elsewhere may be nested without end.
 */
final class ObjectHash {
  /** What a Java runtime brings along and another brings otherwise. */
  private static final Set<COSName> OF_THE_RUNTIME =
      Set.of(COSName.getPDFName("DestOutputProfile"));

  private final Decoded decoded;
  private final IdentityHashMap<COSBase, String> named = new IdentityHashMap<>();
  private final IdentityHashMap<COSBase, Integer> met = new IdentityHashMap<>();

  ObjectHash(Decoded decoded) {
    this.decoded = decoded;
  }

  /** Names an object that others refer to; its content does not count where it is met. */
  void name(COSBase object, String name) {
    named.put(object, name);
  }

  /** Hash of a dictionary with everything below it, 64 hexadecimal digits. */
  String of(COSDictionary top) throws IOException {
    MessageDigest digest = sha256();
    Deque<COSBase> stack = new ArrayDeque<>();
    entries(top, digest, stack);
    while (!stack.isEmpty()) {
      one(stack.pop(), digest, stack);
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private void one(COSBase reference, MessageDigest digest, Deque<COSBase> stack)
      throws IOException {
    COSBase object = resolved(reference);
    String name = named.get(object);
    if (name != null) {
      add(digest, "named " + name);
    } else if (object instanceof COSDictionary || object instanceof COSArray) {
      Integer before = met.putIfAbsent(object, met.size());
      if (before != null) {
        add(digest, "as before " + before);
      } else if (object instanceof COSArray array) {
        add(digest, "array " + array.size());
        for (int i = array.size() - 1; i >= 0; i--) {
          push(array.get(i), stack);
        }
      } else {
        entries((COSDictionary) object, digest, stack);
      }
    } else {
      add(digest, plain(object));
    }
  }

  private void entries(COSDictionary dictionary, MessageDigest digest, Deque<COSBase> stack)
      throws IOException {
    List<COSName> keys = new ArrayList<>(dictionary.keySet());
    keys.removeIf(k -> OF_THE_RUNTIME.contains(k) || Decoded.isPacking(k, dictionary));
    keys.sort(Comparator.comparing(COSName::getName).reversed());
    add(digest, "dictionary " + keys.size());
    if (dictionary instanceof COSStream stream) {
      digest.update(decoded.bytes(stream));
    }
    for (COSName key : keys) {
      push(dictionary.getItem(key), stack);
      stack.push(key);
    }
  }

  private static void push(COSBase value, Deque<COSBase> stack) {
    stack.push(value == null ? COSName.getPDFName("null") : value);
  }

  private static COSBase resolved(COSBase reference) {
    if (reference instanceof COSObject object) {
      COSBase inside = object.getObject();
      return inside == null ? COSName.getPDFName("null") : inside;
    }
    return reference;
  }

  private static String plain(COSBase object) {
    if (object instanceof COSString string) {
      return "string " + string.toHexString();
    }
    if (object instanceof COSName name) {
      return "name " + name.getName();
    }
    if (object instanceof COSInteger integer) {
      return "number " + integer.longValue();
    }
    if (object instanceof COSFloat real) {
      return "number " + real.floatValue();
    }
    return object.toString();
  }

  private static void add(MessageDigest digest, String text) {
    digest.update(text.getBytes(StandardCharsets.UTF_8));
    digest.update((byte) '\n');
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
  }
}
