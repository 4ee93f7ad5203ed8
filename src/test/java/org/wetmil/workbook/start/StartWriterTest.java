package org.wetmil.workbook.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.start.rooms.RoomList;

class StartWriterTest {
  @TempDir private Path folder;

  /** Excel's limits, as Microsoft states them: 1,048,576 rows on a worksheet. */
  @Test
  void moreLinesThanASheetHoldsAreRefusedWithTheirNumbers() {
    RoomList list = new RoomList("a table", UnitSystem.US, List.of(), List.of(), List.of());
    List<DraftLine> lines = Collections.nCopies(1_048_576, new DraftLine("Hall", "walls"));
    Path output = folder.resolve("bid.xlsx");

    assertThatThrownBy(
            () -> StartWriter.write(list, lines, List.of(Path.of("rooms.xlsx")), output, false))
        .isInstanceOf(WorkbookException.TooLarge.class)
        .hasMessage(
            "rooms.xlsx: its 0 rooms give 1,048,576 bid lines, more than the 1,048,575 that a sheet"
                + " holds below its headings; split the workbook, or check where the file came"
                + " from.");
    assertThat(output).doesNotExist();
  }
}
