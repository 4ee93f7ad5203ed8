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
record Fingerprint(Path file, String sha256) {

  static Fingerprint of(Path file) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
        in.transferTo(OutputStream.nullOutputStream());
      }
      return new Fingerprint(file, HexFormat.of().formatHex(digest.digest()));
    } catch (IOException e) {
      throw WorkbookException.Unreadable.of(file, e);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * Sees to it that the file is still what it was.
   *
   * @throws WorkbookException when another program has written to it since
   */
  void requireUnchanged() {
    if (!of(file).sha256().equals(sha256)) {
      throw new WorkbookException.Unreadable(
          file,
          "the file was changed while it was read; close it in other programs and run again.",
          null);
    }
  }
}
