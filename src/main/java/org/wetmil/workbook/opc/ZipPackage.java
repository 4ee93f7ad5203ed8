package org.wetmil.workbook.opc;

import java.io.ByteArrayInputStream;
import java.io.Closeable;
import java.io.EOFException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.wetmil.workbook.WorkbookException;

/**
 * The parts of an Open Packaging Conventions package (ECMA-376 part 2), each by its name such as
 * {@code xl/workbook.xml}. Names are compared without case, as the standard has it. The file is
 * only ever read, and every part is read under {@link Limits}.
 */
public final class ZipPackage implements Closeable {
  private final Path file;
  private final byte[] inMemory;
  private final ZipEntries zip;
  private final Map<String, ZipEntry> entries = new LinkedHashMap<>();

  private ZipPackage(Path file, byte[] inMemory, ZipEntries zip) {
    this.file = file;
    this.inMemory = inMemory;
    this.zip = zip;
  }

  /**
   * Opens a package.
   *
   * @throws WorkbookException when the file cannot be read, is no zip file or is too large
   */
  public static ZipPackage open(Path file) {
    return open(file, null, () -> ZipEntries.in(file));
  }

  /**
   * Opens a package that is in memory alone.
   *
   * @param file that it came from or goes to, for messages
   */
  public static ZipPackage open(Path file, byte[] bytes) {
    return open(file, bytes, () -> ZipEntries.in(bytes));
  }

  private interface Opener {
    ZipEntries open() throws IOException;
  }

  private static ZipPackage open(Path file, byte[] bytes, Opener opener) {
    ZipPackage opened;
    try {
      opened = new ZipPackage(file, bytes, opener.open());
    } catch (ZipException | EOFException e) {
      throw new WorkbookException.Damaged(file, "its zip container", "cut short or altered", e);
    } catch (IOException e) {
      throw WorkbookException.Unreadable.of(file, e);
    }
    try {
      opened.index();
      return opened;
    } catch (RuntimeException e) {
      opened.close();
      throw e;
    }
  }

  private void index() {
    List<? extends ZipEntry> all = listed();
    if (all.size() > Limits.MAX_ENTRIES) {
      throw new WorkbookException.TooLarge(
          file, "it holds " + all.size() + " parts, more than " + Limits.MAX_ENTRIES);
    }
    long inflated = 0;
    for (ZipEntry entry : all) {
      if (entry.isDirectory()) {
        continue;
      }
      String name = normal(entry.getName());
      if (entries.put(key(name), entry) != null) {
        throw new WorkbookException.Damaged(file, name, "the part is there twice");
      }
      inflated += entry.getSize();
      if (inflated > Limits.MAX_INFLATED_BYTES) {
        throw new WorkbookException.TooLarge(
            file, "it inflates to more than " + Limits.MAX_INFLATED_BYTES / (1 << 20) + " MB");
      }
      if (entry.getSize() > Limits.mostInflated(entry.getCompressedSize())) {
        throw new WorkbookException.TooLarge(
            file, name + " inflates more than " + Limits.MAX_INFLATE_RATIO + " times");
      }
    }
  }

  private List<? extends ZipEntry> listed() {
    try {
      return zip.all();
    } catch (IllegalArgumentException e) {
      // the platform's reader says so of a note on a part that is no text
      throw new WorkbookException.Damaged(file, "its zip container", "cut short or altered", e);
    }
  }

  /** The user's file, for messages. */
  public Path file() {
    return file;
  }

  /** The package as a whole. */
  public InputStream whole() throws IOException {
    return inMemory == null ? Files.newInputStream(file) : new ByteArrayInputStream(inMemory);
  }

  /** The names of all parts in the order of the zip directory. */
  public List<String> names() {
    return entries.values().stream().map(entry -> normal(entry.getName())).toList();
  }

  /** Whether there is a part of this name. */
  public boolean has(String part) {
    return entries.containsKey(key(part));
  }

  /** Bytes of a part when inflated; 0 when there is no such part. */
  public long size(String part) {
    ZipEntry entry = entries.get(key(part));
    return entry == null ? 0 : entry.getSize();
  }

  /**
   * The bytes of a part.
   *
   * @throws WorkbookException.Damaged when there is no such part or it cannot be inflated
   */
  public InputStream bytes(String part) {
    ZipEntry entry = entries.get(key(part));
    if (entry == null) {
      throw new WorkbookException.Damaged(file, part, "the part is missing");
    }
    try {
      return new Checked(zip.bytes(entry), entry);
    } catch (IOException e) {
      throw new WorkbookException.Damaged(file, part, "it cannot be inflated", e);
    }
  }

  /** What is done with the XML of a part; the reader stands at the root element. */
  public interface XmlBody<T> {
    T read(XMLStreamReader at) throws XMLStreamException;
  }

  /**
   * Reads a part as XML.
   *
   * @throws WorkbookException.Damaged when the part is missing or is not well formed
   */
  public <T> T xml(String part, XmlBody<T> body) {
    try (InputStream in = bytes(part)) {
      XMLStreamReader reader = XmlIn.open(in);
      try {
        return body.read(reader);
      } finally {
        reader.close();
      }
    } catch (XMLStreamException e) {
      throw new WorkbookException.Damaged(file, part, XmlIn.reason(e), e);
    } catch (IOException e) {
      throw new WorkbookException.Damaged(file, part, "it cannot be inflated", e);
    }
  }

  @Override
  public void close() {
    try {
      zip.close();
    } catch (IOException e) {
      throw WorkbookException.Unreadable.of(file, e);
    }
  }

  private static String normal(String entryName) {
    String name = entryName.replace('\\', '/');
    return name.startsWith("/") ? name.substring(1) : name;
  }

  private static String key(String part) {
    return part.toLowerCase(Locale.ROOT);
  }

  /**
   * A part never gives more bytes than the zip directory says, which the limits were held to, and
   * its bytes are those that were packed: a digit that changed on the way would still be a number.
   */
  private static final class Checked extends FilterInputStream {
    private final CRC32 sum = new CRC32();
    private final long expected;
    private long left;

    private Checked(InputStream in, ZipEntry entry) {
      super(in);
      this.expected = entry.getCrc();
      this.left = entry.getSize();
    }

    @Override
    public int read() throws IOException {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] buffer, int offset, int length) throws IOException {
      int count = super.read(buffer, offset, length);
      if (count > 0) {
        sum.update(buffer, offset, count);
        left -= count;
      }
      if (left < 0 || (count < 0 && left > 0)) {
        throw new ZipException("not as many bytes as the zip directory says");
      }
      if (left == 0 && sum.getValue() != expected) {
        throw new ZipException("its bytes are not those that were packed");
      }
      return count;
    }
  }
}
