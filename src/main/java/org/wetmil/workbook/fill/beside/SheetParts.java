package org.wetmil.workbook.fill.beside;

import java.util.LinkedHashSet;
import java.util.Set;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackagePartName;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.openxml4j.opc.TargetMode;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * The parts that serve one sheet alone and go with it: its drawing, the charts in that, notes. The
 * library leaves the charts, and the lists of what refers to what, which a new sheet of the same
 * part's name would take for its own.
 */
final class SheetParts {
  private static final Set<String> OWNED =
      Set.of(
          "drawing",
          "chart",
          "chartStyle",
          "chartColorStyle",
          "comments",
          "vmlDrawing",
          "printerSettings");

  private SheetParts() {}

  static Set<PackagePartName> ownedBy(XSSFSheet sheet) {
    Set<PackagePartName> owned = new LinkedHashSet<>();
    collect(sheet.getPackagePart(), owned);
    return owned;
  }

  private static void collect(PackagePart part, Set<PackagePartName> owned) {
    if (!owned.add(part.getPartName())) {
      return;
    }
    try {
      for (PackageRelationship to : part.getRelationships()) {
        String type = to.getRelationshipType();
        boolean isOwned = OWNED.contains(type.substring(type.lastIndexOf('/') + 1));
        PackagePart target =
            isOwned && to.getTargetMode() == TargetMode.INTERNAL ? part.getRelatedPart(to) : null;
        if (target != null) {
          collect(target, owned);
        }
      }
    } catch (InvalidFormatException e) {
      // what cannot be followed is left where it is
    }
  }

  /** Takes away what is there of parts, and what they refer to others by. */
  static void remove(OPCPackage opened, Set<PackagePartName> parts) {
    for (PackagePartName part : parts) {
      remove(opened, part);
      remove(opened, PackagingURIHelper.getRelationshipPartName(part));
    }
  }

  private static void remove(OPCPackage opened, PackagePartName part) {
    if (opened.containPart(part)) {
      opened.removePart(part);
    }
  }
}
