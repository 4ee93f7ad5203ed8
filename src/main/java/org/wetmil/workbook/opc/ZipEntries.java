package org.wetmil.workbook.opc;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.zip.ZipEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/** The entries of a zip container, on a disk or in memory. */
interface ZipEntries extends Closeable {
  List<? extends ZipEntry> all();

  InputStream bytes(ZipEntry entry) throws IOException;

  static ZipEntries in(Path file) throws IOException {
    java.util.zip.ZipFile zip = new java.util.zip.ZipFile(file.toFile());
    return new ZipEntries() {
      @Override
      public List<? extends ZipEntry> all() {
        return Collections.list(zip.entries());
      }

      @Override
      public InputStream bytes(ZipEntry entry) throws IOException {
        return zip.getInputStream(entry);
      }

      @Override
      public void close() throws IOException {
        zip.close();
      }
    };
  }

  /** The platform's own reader takes files alone. */
  static ZipEntries in(byte[] bytes) throws IOException {
    ZipFile zip =
        ZipFile.builder().setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes)).get();
    return new ZipEntries() {
      @Override
      public List<? extends ZipEntry> all() {
        return Collections.list(zip.getEntries());
      }

      @Override
      public InputStream bytes(ZipEntry entry) throws IOException {
        return zip.getInputStream((ZipArchiveEntry) entry);
      }

      @Override
      public void close() throws IOException {
        zip.close();
      }
    };
  }
}
