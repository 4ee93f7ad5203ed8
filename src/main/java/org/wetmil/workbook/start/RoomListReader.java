package org.wetmil.workbook.start;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.read.ReadOptions;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridReader;
import org.wetmil.workbook.read.grid.MissingResults;
import org.wetmil.workbook.read.grid.OwnMarks;
import org.wetmil.workbook.start.cobie.CobieReader;
import org.wetmil.workbook.start.rooms.RoomList;
import org.wetmil.workbook.start.rooms.RoomTables;
import org.wetmil.workbook.start.rooms.Several;
import org.wetmil.workbook.stream.PackageReader;
import org.wetmil.workbook.stream.SheetPart;

/** Reads a room list: COBie where the workbook is that, else a table of rooms. */
final class RoomListReader {
  private RoomListReader() {}

  /**
   * Reads the rooms of a workbook, which is only ever read.
   *
   * @throws WorkbookException when the file cannot be read, or lists no rooms
   */
  static RoomList read(Path file, Passwords passwords) {
    try (PackageReader workbook = PackageReader.open(file, passwords);
        MissingResults missing =
            new MissingResults(workbook.zip()::whole, ReadOptions.USUAL.mostRowsComputed())) {
      GridReader reader = new GridReader(workbook, OwnMarks.of(workbook), missing);
      Function<SheetPart, Grid> grids = reader::whole;
      RoomTables tables = new RoomTables(workbook.sheets(), grids);
      RoomList list =
          CobieReader.read(workbook.sheets(), grids)
              .or(tables::read)
              .orElseThrow(() -> noRooms(file, workbook.sheets(), neither(tables), List.of()));
      if (list.rooms().isEmpty()) {
        throw noRooms(file, workbook.sheets(), list.source() + ", names no room", list.remarks());
      }
      return list;
    }
  }

  private static String neither(RoomTables tables) {
    return tables.bids().isEmpty()
        ? "neither was found"
        : "\"" + tables.bids().get(0) + "\" is a bid already; the command fill takes it as it is";
  }

  /**
   * @param remarks what was found in the place of rooms
   */
  private static WorkbookException noRooms(
      Path file, List<SheetPart> sheets, String why, List<String> remarks) {
    List<String> names = sheets.stream().map(sheet -> "\"" + sheet.name() + "\"").toList();
    return new WorkbookException.NoRooms(
        file,
        "no list of rooms: looked for a COBie sheet Space, or a table headed Room or Name with one"
            + " of Area, Perimeter, Length or Height; %s (sheets: %s).%s"
                .formatted(
                    why,
                    Several.of(names),
                    remarks.stream().map(" "::concat).collect(Collectors.joining())));
  }
}
