package org.wetmil.workbook.opc;

import java.net.URI;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
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

  /** The file of a name in the folder of another file. */
  public static Path beside(Path file, String name) {
    Path folder = file.getParent();
    return in(folder == null ? Path.of("") : folder, name);
  }

  /** The file of a name in a folder. */
  public static Path in(Path folder, String name) {
    try {
      return folder.resolve(name);
    } catch (InvalidPathException e) {
      String uri = folder.toUri().toString();
      String encoded = URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
      return Path.of(URI.create((uri.endsWith("/") ? uri : uri + "/") + encoded));
    }
  }
}
