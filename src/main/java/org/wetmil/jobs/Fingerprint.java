package org.wetmil.jobs;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.wetmil.workbook.WorkbookException;

/** The SHA-256 of a file, by which a filled workbook names its input. */
final class Fingerprint {
  private Fingerprint() {}

  static String sha256(Path file) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
        in.transferTo(OutputStream.nullOutputStream());
      }
      return HexFormat.of().formatHex(digest.digest());
    } catch (IOException e) {
      String why =
          Files.isDirectory(file)
              ? "is a folder; name the workbook in it."
              : Files.exists(file) ? "cannot be read." : "is not there.";
      throw new WorkbookException.Unreadable(file, why, e);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
