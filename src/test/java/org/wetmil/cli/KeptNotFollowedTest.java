package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.SmallBid;
import org.wetmil.hostile.Parts;

/** Links, connections and pictures elsewhere stay in the copy; nobody goes there. */
class KeptNotFollowedTest {
  private static final String TYPES =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.";
  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

  @TempDir Path folder;

  @Test
  void linksAndConnectionsAreKeptAndNotFollowed() throws IOException {
    try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      String address = "http://127.0.0.1:" + server.getLocalPort() + "/prices.xlsx";
      Path bid = bidWithLinksTo(address);
      Path filled = folder.resolve("filled.xlsx");

      assertThat(Ran.fill(bid, "--out", filled).code()).isZero();

      Parts before = Parts.of(bid);
      Parts after = Parts.of(filled);
      assertThat(after.ending("connections.xml").text())
          .isEqualTo(before.ending("connections.xml").text());
      assertThat(after.ending("externalLink1.xml").text()).contains("val=\"Prices\"");
      assertThat(after.ending("externalLink1.xml.rels").text()).contains(address);
      server.setSoTimeout(200);
      assertThat(org.assertj.core.api.Assertions.catchThrowable(server::accept))
          .isInstanceOf(SocketTimeoutException.class);
    }
  }

  @Test
  void notesBearTheNameOfTheToolAndOfNobody() throws IOException {
    Path filled = folder.resolve("filled.xlsx");
    Ran.fill(SmallBid.write(folder.resolve("job.xlsx")), "--out", filled);

    try (XSSFWorkbook workbook = new XSSFWorkbook(filled.toString())) {
      XSSFComment note = workbook.getSheetAt(0).getCellComment(new CellAddress("G3"));
      assertThat(note.getAuthor()).isEqualTo("Wetmil");
    }
  }

  private Path bidWithLinksTo(String address) throws IOException {
    Parts parts = Parts.of(SmallBid.write(folder.resolve("job.xlsx")));
    Parts.Part types = parts.ending("[Content_Types].xml");
    parts.replace(
        types,
        types
            .text()
            .replace(
                "</Types>",
                override("connections", "connections")
                    + override("externalLinks/externalLink1", "externalLink")
                    + "</Types>"));
    Parts.Part relations = parts.ending("xl/_rels/workbook.xml.rels");
    parts.replace(
        relations,
        relations
            .text()
            .replace(
                "</Relationships>",
                relation("rId91", "connections", "connections.xml", "")
                    + relation("rId92", "externalLink", "externalLinks/externalLink1.xml", "")
                    + "</Relationships>"));
    Parts.Part workbook = parts.ending("xl/workbook.xml");
    parts.replace(
        workbook,
        workbook
            .text()
            .replace(
                "</sheets>",
                "</sheets><externalReferences><externalReference xmlns:q=\""
                    + RELATIONS
                    + "\" q:id=\"rId92\"/></externalReferences>"));
    add(
        parts,
        "xl/connections.xml",
        "<connections xmlns=\"%s\"><connection id=\"1\" name=\"prices\" type=\"4\" refreshedVersion=\"6\" refreshOnLoad=\"1\"><webPr url=\"%s\"/></connection></connections>"
            .formatted(MAIN, address));
    add(
        parts,
        "xl/externalLinks/externalLink1.xml",
        "<externalLink xmlns=\"%s\"><externalBook xmlns:r=\"%s\" r:id=\"rId1\"><sheetNames><sheetName val=\"Prices\"/></sheetNames></externalBook></externalLink>"
            .formatted(MAIN, RELATIONS));
    add(
        parts,
        "xl/externalLinks/_rels/externalLink1.xml.rels",
        "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
            + relation("rId1", "externalLinkPath", address, " TargetMode=\"External\"")
            + "</Relationships>");
    return Files.write(folder.resolve("job.xlsx"), parts.zip());
  }

  private static void add(Parts parts, String name, String text) {
    parts.add(name, text.getBytes(StandardCharsets.UTF_8));
  }

  private static String override(String part, String type) {
    return "<Override PartName=\"/xl/%s.xml\" ContentType=\"%s%s+xml\"/>"
        .formatted(part, TYPES, type);
  }

  private static String relation(String id, String type, String target, String more) {
    return "<Relationship Id=\"%s\" Type=\"%s/%s\" Target=\"%s\"%s/>"
        .formatted(id, RELATIONS, type, target, more);
  }
}
