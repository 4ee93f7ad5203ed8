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
  private Locked() {}

  /** Protects a workbook in its place, in the way given. */
  public static Path with(String password, EncryptionMode mode, Path file) {
    try (POIFSFileSystem container = new POIFSFileSystem()) {
      Encryptor encryptor = new EncryptionInfo(mode).getEncryptor();
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

  /** Protects a workbook as spreadsheet programs do now. */
  public static Path with(String password, Path file) {
    return with(password, EncryptionMode.agile, file);
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
