package org.wetmil.workbook.opc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.workbook.HandMade;
import org.wetmil.workbook.WorkbookException;

class ZipPackageTest {
  @TempDir Path folder;

  @Test
  void namesAreComparedWithoutCaseAndSlashesOfEitherKind() throws IOException {
    Path file = zip("XL\\Workbook.xml", "x".getBytes(StandardCharsets.US_ASCII));

    try (ZipPackage zip = ZipPackage.open(file)) {
      assertThat(zip.names()).containsExactly("XL/Workbook.xml");
      assertThat(zip.has("xl/workbook.xml")).isTrue();
    }
  }

  @Test
  void aPartThatInflatesBeyondReasonIsRefused() throws IOException {
    // a megabyte of zeros packs to about a thousand bytes
    Path file = zip("xl/a.xml", new byte[2 * (int) Limits.RATIO_FREE_BYTES]);

    assertThatThrownBy(() -> ZipPackage.open(file))
        .isInstanceOf(WorkbookException.TooLarge.class)
        .hasMessageContaining("xl/a.xml inflates more than 400 times");
  }

  @Test
  void aPartOfOneTextRepeatedIsReadUpToASizeThatDoesNoHarm() throws IOException {
    byte[] bytes = new byte[(int) Limits.RATIO_FREE_BYTES + 1];
    Path file = zip("xl/a.xml", bytes);

    assertThat(bytes.length / Files.size(file)).isGreaterThan(Limits.MAX_INFLATE_RATIO);
    try (ZipPackage zip = ZipPackage.open(file)) {
      assertThat(zip.size("xl/a.xml")).isEqualTo(bytes.length);
    }
  }

  @Test
  void aPartLargerThanTheDirectorySaysIsDamaged() throws IOException {
    Path file = zip("xl/a.xml", new byte[5_000]);
    byte[] bytes = Files.readAllBytes(file);
    // Size in the central directory: 24 bytes after its signature PK 1 2.
    for (int i = 0; i < bytes.length - 28; i++) {
      if (bytes[i] == 'P' && bytes[i + 1] == 'K' && bytes[i + 2] == 1 && bytes[i + 3] == 2) {
        bytes[i + 24] = 10;
        bytes[i + 25] = 0;
      }
    }
    Files.write(file, bytes);

    try (ZipPackage zip = ZipPackage.open(file);
        InputStream in = zip.bytes("xl/a.xml")) {
      assertThatThrownBy(in::readAllBytes).isInstanceOf(IOException.class);
    }
  }

  @Test
  void aByteThatChangedOnTheWayIsNoticed() throws IOException {
    Path file = folder.resolve("stored.zip");
    byte[] part = "<row height=\"9.5\"/>".getBytes(StandardCharsets.US_ASCII);
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      zip.setLevel(0);
      zip.putNextEntry(new ZipEntry("xl/a.xml"));
      zip.write(part);
    }
    byte[] bytes = Files.readAllBytes(file);
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    bytes[text.indexOf("9.5")] = '8';
    Files.write(file, bytes);

    try (ZipPackage zip = ZipPackage.open(file)) {
      assertThatThrownBy(() -> zip.xml("xl/a.xml", XmlIn::nextChild))
          .isInstanceOf(WorkbookException.Damaged.class)
          .hasMessageContaining("xl/a.xml");
    }
  }

  @Test
  void aPackageThatInflatesToMoreThanFourGigabytesIsRefused() throws IOException {
    Path file = folder.resolve("large.zip");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      for (String name : List.of("xl/a.xml", "xl/b.xml")) {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(new byte[5_000]);
      }
    }
    claimSizes(file, (int) (Limits.MAX_INFLATED_BYTES / 400) + 1, 0xFFFF_FF00);

    assertThatThrownBy(() -> ZipPackage.open(file))
        .isInstanceOf(WorkbookException.TooLarge.class)
        .hasMessageContaining("inflates to more than 4096 MB");
  }

  @Test
  void aPartThatWouldBeHeldInMemoryIsRefusedWhenItIsTooLarge() throws IOException {
    Path file = zip("xl/styles.xml", new byte[5_000]);
    claimSizes(file, 1 << 20, (int) Limits.MAX_TREE_BYTES + 1);

    try (ZipPackage zip = ZipPackage.open(file)) {
      assertThatThrownBy(() -> Limits.requireTree(zip, "xl/styles.xml"))
          .isInstanceOf(WorkbookException.TooLarge.class)
          .hasMessageContaining("xl/styles.xml holds more than 256 MB");
    }
  }

  @Test
  void elementsNestedTooDeepAreRefused() throws IOException {
    int depth = Limits.MAX_XML_DEPTH + 1;
    String text = "<a>".repeat(depth) + "</a>".repeat(depth);
    Path file = zip("xl/a.xml", text.getBytes(StandardCharsets.US_ASCII));

    try (ZipPackage zip = ZipPackage.open(file)) {
      assertThatThrownBy(() -> zip.xml("xl/a.xml", XmlIn::end))
          .isInstanceOf(WorkbookException.Damaged.class)
          .hasMessageContaining("nested more than 1000 deep");
    }
  }

  /** Sets the sizes in the directory: 20 bytes after its signature PK 1 2, packed and inflated. */
  private static void claimSizes(Path file, int packed, int inflated) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file)).order(ByteOrder.LITTLE_ENDIAN);
    for (int i = 0; i < bytes.limit() - 28; i++) {
      if (bytes.getInt(i) == 0x0201_4B50) {
        bytes.putInt(i + 20, packed).putInt(i + 24, inflated);
      }
    }
    Files.write(file, bytes.array());
  }

  @Test
  void tooManyPartsAreRefused() throws IOException {
    Path file = folder.resolve("many.zip");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      for (int i = 0; i <= Limits.MAX_ENTRIES; i++) {
        zip.putNextEntry(new ZipEntry("a" + i));
      }
    }

    assertThatThrownBy(() -> ZipPackage.open(file))
        .isInstanceOf(WorkbookException.TooLarge.class)
        .hasMessageContaining("20001 parts");
  }

  @Test
  void aDocumentTypeIsRefusedBeforeItsEntitiesAreRead() {
    Path file =
        new HandMade("<!DOCTYPE a [<!ENTITY b SYSTEM \"file:///etc/hostname\">]><a>&b;</a>")
            .write(folder.resolve("a.xlsx"));

    try (ZipPackage zip = ZipPackage.open(file)) {
      assertThatThrownBy(() -> zip.xml("xl/worksheets/sheet1.xml", at -> at.getElementText()))
          .isInstanceOf(WorkbookException.Damaged.class)
          .hasMessageContaining("document type");
    }
  }

  private Path zip(String name, byte[] bytes) throws IOException {
    Path file = folder.resolve("a.zip");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      zip.putNextEntry(new ZipEntry(name));
      zip.write(bytes);
    }
    return file;
  }
}
