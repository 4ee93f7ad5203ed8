package org.wetmil.workbook.opc;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/**
 * The names of files as they are on the disk. In a session whose character set is plain ASCII, a
 * path that was listed keeps the bytes of its name but shows others as unknown; its URI tells them.
 */
public final class FileName {
  private static final char UNKNOWN = '\uFFFD';

  private FileName() {}

  /** The last name of a path, whatever the character set of the session. */
  public static String of(Path path) {
    String name = String.valueOf(path.getFileName());
    if (name.indexOf(UNKNOWN) < 0) {
      return name;
    }
    String uri = path.toUri().getRawPath();
    String last = uri.substring(uri.lastIndexOf('/') + 1);
    return URLDecoder.decode(last.replace("+", "%2B"), StandardCharsets.UTF_8);
  }
}
