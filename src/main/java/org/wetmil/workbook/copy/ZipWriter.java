package org.wetmil.workbook.copy;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.xml.stream.XMLStreamException;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.opc.XmlOut;
import org.wetmil.workbook.opc.ZipPackage;

/** Writes the parts of a package one after another, compressed while the next bytes are made. */
final class ZipWriter implements Closeable {
  /**
   * One time for all parts, so that the same content gives the same file. Not the first of the
   * format, beside which the JDK writes another one that depends on the machine's time zone.
   */
  private static final LocalDateTime TIME = LocalDateTime.of(1980, 2, 1, 0, 0);

  private final ZipOutputStream zip;
  private final Behind behind = new Behind();
  private final OutputStream content;

  /**
   * Begins a package.
   *
   * @param level 0 (none) to 9 (smallest)
   */
  ZipWriter(OutputStream out, int level) {
    zip = new ZipOutputStream(new BufferedOutputStream(out, 1 << 16));
    zip.setLevel(level);
    content = behind.to(zip);
  }

  /** What writes the XML of a part. */
  interface XmlPart {
    void write(XmlOut out) throws XMLStreamException;
  }

  /** Writes a part as XML. */
  void xml(String part, XmlPart writer) throws XMLStreamException {
    begin(part);
    try (XmlOut out = new XmlOut(content)) {
      writer.write(out);
    }
    end();
  }

  /** What writes the bytes of a part. */
  interface BytesPart {
    void write(OutputStream out) throws IOException;
  }

  /** Writes a part as it is given. */
  void bytes(String part, BytesPart writer) {
    begin(part);
    try {
      writer.write(content);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    end();
  }

  /** Copies a part byte by byte. */
  void copy(ZipPackage from, String part) {
    copy(from, part, part);
  }

  /** Copies a part byte by byte under another name. */
  void copy(ZipPackage from, String part, String name) {
    begin(name);
    try (InputStream in = from.bytes(part)) {
      in.transferTo(content);
    } catch (IOException e) {
      // What cannot be written is said by the stream beneath, so this is the reading.
      throw new WorkbookException.Damaged(from.file(), part, "it cannot be inflated", e);
    }
    end();
  }

  private void begin(String part) {
    ZipEntry entry = new ZipEntry(part);
    entry.setTimeLocal(TIME);
    behind.then(() -> zip.putNextEntry(entry));
  }

  private void end() {
    behind.then(zip::closeEntry);
  }

  @Override
  public void close() {
    behind.close(zip::close);
  }
}
