package org.wetmil.workbook.start;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.wetmil.workbook.read.Book;

/**
 * Makes small COBie workbooks of an invented building, with the headings that the standard gives
 * its sheets (those that a bid takes; from memory).
 */
final class Cobie {
  private final String linearUnits;
  private final String areaUnits;
  private final List<Object[]> spaces = new ArrayList<>();
  private final List<Object[]> types = new ArrayList<>();
  private final List<Object[]> components = new ArrayList<>();
  private final List<Object[]> attributes = new ArrayList<>();

  Cobie(String linearUnits, String areaUnits) {
    this.linearUnits = linearUnits;
    this.areaUnits = areaUnits;
  }

  Cobie space(Object name, Object description, Object floor, Object height, Object net) {
    spaces.add(new Object[] {name, "someone@example.com", floor, description, height, "n/a", net});
    return this;
  }

  Cobie type(String name, String category, String description, Object width, Object height) {
    return type(name, category, description, width, height, "Color");
  }

  /**
   * @param colour programs that know none write the heading
   */
  Cobie type(
      String name,
      String category,
      String description,
      Object width,
      Object height,
      String colour) {
    types.add(new Object[] {name, category, description, "n/a", width, height, colour, "n/a"});
    return this;
  }

  Cobie component(String name, String type, String space) {
    components.add(new Object[] {name, type, space});
    return this;
  }

  Cobie attribute(String name, String room, Object value, String unit) {
    attributes.add(new Object[] {name, "Space", room, value, unit});
    return this;
  }

  Path write(Path folder) {
    Book book =
        new Book()
            .sheet("Facility")
            .row("Name", "LinearUnits", "AreaUnits")
            .row("Harbour House", linearUnits, areaUnits)
            .sheet("Floor")
            .row("Name", "Elevation")
            .row("Ground", 0);
    rows(
        book,
        "Space",
        spaces,
        "Name",
        "CreatedBy",
        "FloorName",
        "Description",
        "UsableHeight",
        "GrossArea",
        "NetArea");
    rows(
        book,
        "Type",
        types,
        "Name",
        "Category",
        "Description",
        "NominalLength",
        "NominalWidth",
        "NominalHeight",
        "Color",
        "Finish");
    rows(book, "Component", components, "Name", "TypeName", "Space");
    rows(book, "Attribute", attributes, "Name", "SheetName", "RowName", "Value", "Unit");
    return book.write(folder, "handover.xlsx");
  }

  private static void rows(Book book, String sheet, List<Object[]> rows, Object... headings) {
    book.sheet(sheet).row(headings);
    rows.forEach(book::row);
  }
}
