package org.wetmil.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import org.apache.poi.poifs.crypt.Decryptor;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/** Protects workbooks with a password, and takes the protection off, by the library alone. */
public final class Locked {
  /** Spreadsheet programs take a hundred thousand, so that guessing takes long; so would tests. */
  private static final int FEW_HASHES = 1_000;

  private Locked() {}

  /** Protects a workbook in its place, in the way given and as slow to open as programs make it. */
  public static Path with(String password, EncryptionMode mode, Path file) {
    return with(password, new EncryptionInfo(mode), file);
  }

  private static Path with(String password, EncryptionInfo info, Path file) {
    try (POIFSFileSystem container = new POIFSFileSystem()) {
      Encryptor encryptor = info.getEncryptor();
      encryptor.confirmPassword(password);
      try (OutputStream inside = encryptor.getDataStream(container)) {
        inside.write(Files.readAllBytes(file));
      }
      try (OutputStream out = Files.newOutputStream(file)) {
        container.writeFilesystem(out);
      }
      return file;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * Protects a workbook as spreadsheet programs do now, but for how often the password is hashed.
   */
  public static Path with(String password, Path file) {
    EncryptionInfo info = new EncryptionInfo(EncryptionMode.agile);
    info.getVerifier().setSpinCount(FEW_HASHES);
    return with(password, info, file);
  }

  /** Writes what is in a protected workbook to another file. */
  public static Path opened(Path file, String password, Path plain) {
    try (POIFSFileSystem container = new POIFSFileSystem(file.toFile(), true)) {
      Decryptor decryptor = Decryptor.getInstance(new EncryptionInfo(container));
      if (!decryptor.verifyPassword(password)) {
        throw new AssertionError(file + " is not opened by " + password);
      }
      try (InputStream in = decryptor.getDataStream(container)) {
        Files.copy(in, plain);
      }
      return plain;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }
}
