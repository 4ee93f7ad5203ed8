package org.wetmil.bench;

import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.Collections;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * What no filling can do without: the input is inflated, and every part of the output is deflated
 * at the usual level 6, on one core. Nothing is read as XML, computed or written.
 */
final class Floor {
  private static final int USUAL_LEVEL = 6;
  private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

  private Floor() {}

  /** Seconds of processor. */
  static double seconds(Path input, Path output) throws IOException {
    return inflated(input) + deflated(output);
  }

  private static double inflated(Path file) throws IOException {
    byte[] chunk = new byte[1 << 16];
    long start = CLOCK.getCurrentThreadCpuTime();
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        try (InputStream in = zip.getInputStream(entry)) {
          while (in.read(chunk) >= 0) {
            // only the inflating counts
          }
        }
      }
    }
    return (CLOCK.getCurrentThreadCpuTime() - start) / 1e9;
  }

  /** To have the parts they are inflated first, which is not counted. */
  private static double deflated(Path file) throws IOException {
    byte[] chunk = new byte[1 << 20];
    byte[] out = new byte[1 << 16];
    long spent = 0;
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        Deflater deflater = new Deflater(USUAL_LEVEL, true);
        try (InputStream in = zip.getInputStream(entry)) {
          int length;
          do {
            length = in.readNBytes(chunk, 0, chunk.length);
            long start = CLOCK.getCurrentThreadCpuTime();
            deflater.setInput(chunk, 0, length);
            if (length < chunk.length) {
              deflater.finish();
            }
            while (deflater.deflate(out) > 0) {
              // where the bytes go does not count
            }
            spent += CLOCK.getCurrentThreadCpuTime() - start;
          } while (length == chunk.length);
        } finally {
          deflater.end();
        }
      }
    }
    return spent / 1e9;
  }
}
