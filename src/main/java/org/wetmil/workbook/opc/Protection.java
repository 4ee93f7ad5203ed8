package org.wetmil.workbook.opc;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.poifs.crypt.CipherAlgorithm;
import org.apache.poi.poifs.crypt.Decryptor;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.crypt.HashAlgorithm;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.wetmil.workbook.WorkbookException;

/**
 * Takes the protection by a password (MS-OFFCRYPTO) off a workbook in memory, and puts it on. What
 * is without it is never written to a disk.
 */
public final class Protection {
  /** What spreadsheet programs encrypt with where a workbook may be read by anybody. */
  private static final String FOR_ANYBODY = Decryptor.DEFAULT_PASSWORD;

  private Protection() {}

  /**
   * A workbook without its protection.
   *
   * @param password that opened it
   */
  record Opened(byte[] bytes, String password) {}

  /**
   * Opens a protected workbook.
   *
   * @throws WorkbookException.Encrypted when none of the passwords opens it
   */
  static Opened open(Path file, Passwords passwords) {
    List<String> words = new ArrayList<>(passwords.words());
    words.add(FOR_ANYBODY);
    try (POIFSFileSystem container = new POIFSFileSystem(file.toFile(), true)) {
      Decryptor decryptor = Decryptor.getInstance(new EncryptionInfo(container));
      for (String word : words) {
        if (decryptor.verifyPassword(word)) {
          try (InputStream in = decryptor.getDataStream(container)) {
            return new Opened(in.readAllBytes(), word);
          }
        }
      }
    } catch (IOException | GeneralSecurityException | RuntimeException e) {
      // the library throws many kinds on a container that it does not understand
      throw new WorkbookException.Unreadable(
          file,
          "the workbook is protected in a way that is not known here; open it in a spreadsheet"
              + " program and save it with a plain password or without one.",
          e);
    }
    throw new WorkbookException.Encrypted(file, !passwords.words().isEmpty());
  }

  /**
   * Writes a workbook protected by a password, with the cipher that spreadsheet programs use now.
   * Salts are drawn at random, so that no two results are the same.
   */
  public static void write(byte[] bytes, String password, OutputStream out) throws IOException {
    EncryptionInfo info =
        new EncryptionInfo(
            EncryptionMode.agile, CipherAlgorithm.aes256, HashAlgorithm.sha512, -1, -1, null);
    Encryptor encryptor = info.getEncryptor();
    encryptor.confirmPassword(password);
    try (POIFSFileSystem container = new POIFSFileSystem()) {
      try (OutputStream in = encryptor.getDataStream(container)) {
        in.write(bytes);
      } catch (GeneralSecurityException e) {
        throw new IllegalStateException(e);
      }
      container.writeFilesystem(out);
    }
  }
}
