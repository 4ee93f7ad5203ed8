package org.wetmil.workbook.copy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.workbook.HandMade;
import org.wetmil.workbook.WorkbookException;

class BrokenWorkbookTest {
  @TempDir Path folder;

  @Test
  void whateverIsBrokenIsSaidInASentenceOrCopied() {
    Random random = new Random(1904);
    int refused = 0;
    for (int i = 0; i < 400; i++) {
      HandMade made = workbook();
      String part = made.names().get(random.nextInt(made.names().size()));
      made.part(part, broken(made.text(part), random));
      try {
        copy(made);
      } catch (WorkbookException e) {
        assertThat(e.getMessage()).doesNotContain("Exception").endsWith(".");
        refused++;
      }
    }
    assertThat(refused).isBetween(100, 390);
    assertThat(folder).isDirectoryNotContaining("glob:**.tmp");
  }

  @Test
  void aWorkbookPartWithoutItsNamespaceIsDamaged() {
    HandMade made = workbook().replace("xl/workbook.xml", "xmlns=\"" + HandMade.MAIN + "\"", "");

    assertThatThrownBy(() -> copy(made))
        .isInstanceOf(WorkbookException.Damaged.class)
        .hasMessageContaining("xl/workbook.xml");
  }

  private static HandMade workbook() {
    return new HandMade(
            HandMade.sheet(
                "<row r=\"1\" spans=\"1:2\"><c r=\"A1\" t=\"s\"><v>0</v></c>"
                    + "<c r=\"B1\" s=\"1\"><v>2.5</v></c></row>"))
        .strings("<t>room</t>")
        .styles(
            "<fonts count=\"1\"><font/></fonts><fills><fill/></fills><borders><border/></borders>"
                + "<cellStyleXfs><xf/></cellStyleXfs>"
                + "<cellXfs><xf/><xf numFmtId=\"2\" fontId=\"0\"/></cellXfs>");
  }

  private static String broken(String text, Random random) {
    int at = random.nextInt(text.length());
    return switch (random.nextInt(4)) {
      case 0 -> text.substring(0, at);
      case 1 -> text.substring(0, at) + (char) (' ' + random.nextInt(95)) + text.substring(at + 1);
      case 2 -> text.replaceAll("\"\\d+\"", random.nextBoolean() ? "\"-1\"" : "\"99999999999\"");
      default -> {
        int from = text.lastIndexOf('<', at);
        int to = text.indexOf('>', at);
        yield from < 0 || to < 0 ? "" : text.substring(0, from) + text.substring(to + 1);
      }
    };
  }

  private void copy(HandMade made) {
    Copies.write(
        made.write(folder.resolve("in.xlsx")),
        folder.resolve("out.xlsx"),
        true,
        workbook -> {
          List<SheetEdit> edits = new ArrayList<>();
          workbook.forEach(
              sheet ->
                  edits.add(
                      Edits.adding(
                          sheet.getSheetName(),
                          row -> List.of(new AddedCell(5, 0, new CellContent.Num(row))))));
          workbook.createSheet("Ours").createRow(0).createCell(0).setCellValue("ours");
          return edits;
        });
  }
}
