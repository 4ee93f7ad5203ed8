package org.wetmil.workbook.fill.page;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Rows;

/** The page of usual cautions; data sheets, local codes and licensed practice come first. */
final class CautionsSheet {
  private static final List<String[]> CAUTIONS =
      List.of(
          new String[] {
            "First of all",
            "The coating's data sheet, the maker's manual of the machine, local codes and licensed"
                + " practice come before anything in this workbook. Nothing here is legal advice."
          },
          new String[] {
            "Injection",
            "Paint at spraying pressure goes through skin and gloves. The wound looks small and is"
                + " a surgical emergency: go to a hospital at once, say that it is a high-pressure"
                + " injection and take the data sheet along. Trigger locked, pressure released,"
                + " guard on before a tip is turned, cleaned or changed. Never feel for a leak by"
                + " hand."
          },
          new String[] {
            "Trigger safety",
            "From 1,000 psi airless guns need an automatic or visible manual safety, or a diffuser"
                + " with a tip guard (29 CFR 1926.302(b))."
          },
          new String[] {
            "Fire",
            "Vapours of solvent-borne coatings burn and travel. No flame, spark or hot surface near"
                + " the work; ground the pump, the pail and the work; flush into a grounded metal"
                + " pail, with the tip off and at low pressure."
          },
          new String[] {
            "Air",
            "Ventilate while spraying and afterwards until vapours have cleared. Wear the"
                + " respirator that the data sheet names, fitted and with the right cartridge; cover"
                + " eyes and skin. Two-part coatings can sensitise for life."
          },
          new String[] {
            "Lead",
            "Paint from before 1978 may hold lead. Work that disturbs more than 6 square feet in a"
                + " room or 20 outside can fall under the lead-safe rule (40 CFR 745); test first,"
                + " and ask who is certified. Sanding or burning it poisons the crew and the people"
                + " who live there."
          },
          new String[] {
            "Heights",
            "Ladders on firm ground and tied, lifts with harness and trained hands. The recoil and"
                + " the hose pull: no spraying from the top rungs."
          },
          new String[] {
            "Weather",
            "Keep the surface above the dew point (specifications often want 5 °F and rising); do"
                + " not spray outside in wind."
          });

  private final XSSFSheet sheet;
  private final Look look;
  private final CrewLook standing;

  CautionsSheet(XSSFSheet sheet, Look look) {
    this.sheet = sheet;
    this.look = look;
    this.standing = new CrewLook(look);
  }

  void write() {
    Rows rows = new Rows(sheet);
    rows.row().text("Cautions", look.title());
    rows.gap();
    for (String[] caution : CAUTIONS) {
      rows.row().text(caution[0], standing.large(true)).text(caution[1], standing.large(false));
      rows.height(24 * (1 + caution[1].length() / 88f));
    }
    Pages.width(sheet, 0, 20);
    Pages.width(sheet, 1, 96);
    Pages.upright(sheet, 2, rows.number());
  }
}
