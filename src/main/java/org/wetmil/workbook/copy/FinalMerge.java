package org.wetmil.workbook.copy;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.wetmil.workbook.opc.XmlIn;
import org.wetmil.workbook.opc.XmlOut;
import org.wetmil.workbook.opc.ZipPackage;
import org.wetmil.workbook.stream.PackageReader;
import org.wetmil.workbook.stream.SheetPart;

/** The last step: the shaped package with the original rows and shared strings put back. */
final class FinalMerge {
  private static final Set<String> COUNTS = Set.of("count", "uniqueCount");

  private final PackageReader original;
  private final int originalStrings;
  private final PackageReader shaped;
  private final ZipWriter out;
  private final Predicate<String> hidden;

  /**
   * Prepares the merge.
   *
   * @param originalStrings how many shared strings the original has
   * @param hidden which names the user is not to be shown; the library cannot hide a name
   */
  FinalMerge(
      PackageReader original,
      int originalStrings,
      PackageReader shaped,
      ZipWriter out,
      Predicate<String> hidden) {
    this.original = original;
    this.originalStrings = originalStrings;
    this.shaped = shaped;
    this.out = out;
    this.hidden = hidden;
  }

  /**
   * Writes all parts.
   *
   * @param kept by the name of a part in the shaped package, the original sheet it stands for
   * @param edits by the name of an original sheet
   * @param added by the name of a part in the shaped package, the rows of a new sheet
   * @param stamps by the name of a part in the shaped package, the copies of a drawing's shapes
   */
  void write(
      Map<String, SheetPart> kept,
      Map<String, SheetEdit> edits,
      Map<String, NewRows> added,
      Map<String, Stamps> stamps) {
    ZipPackage zip = shaped.zip();
    String strings = shaped.sharedStringsPart().orElse("");
    boolean moved = originalStrings > 0 && hasStrings(strings);
    Map<String, SheetPart> sheets = Parts.byName(shaped.sheets());
    for (String part : zip.names()) {
      SheetPart sheet = Parts.get(kept, part);
      if (sheet != null) {
        mergeSheet(part, sheet, edits.get(sheet.name()));
      } else if (added.containsKey(Parts.key(part))) {
        NewSheetMerge.write(zip, part, added.get(Parts.key(part)), out);
      } else if (stamps.containsKey(Parts.key(part))) {
        stamps.get(Parts.key(part)).write(zip, part, out);
      } else if (part.equalsIgnoreCase(strings) && originalStrings > 0) {
        mergeStrings(part, moved);
      } else if (moved && Parts.get(sheets, part) != null) {
        moveStrings(part);
      } else if (part.equalsIgnoreCase(shaped.mainPart())) {
        hideNames(part);
      } else {
        out.copy(zip, part);
      }
    }
  }

  private void mergeSheet(String part, SheetPart sheet, SheetEdit edit) {
    shaped
        .zip()
        .xml(
            part,
            from ->
                original.sheetXml(
                    sheet,
                    rows -> {
                      out.xml(
                          part, to -> new SheetMerge(from, rows, original.cells(), to).write(edit));
                      return null;
                    }));
  }

  private boolean hasStrings(String part) {
    return !part.isEmpty() && shaped.zip().xml(part, XmlIn::nextChild);
  }

  /** The strings of the original keep their places; those of new sheets follow. */
  private void mergeStrings(String part, boolean moved) {
    Optional<String> from = original.sharedStringsPart();
    if (!moved) {
      out.copy(original.zip(), from.orElseThrow(), part);
      return;
    }
    original
        .zip()
        .xml(
            from.orElseThrow(),
            at -> {
              out.xml(part, to -> strings(at, part, to));
              return null;
            });
  }

  private void strings(XMLStreamReader at, String shapedPart, XmlOut to) throws XMLStreamException {
    to.startName(at);
    for (int i = 0; i < at.getAttributeCount(); i++) {
      // How many there are and how often they are used may be left out, but must not be wrong.
      if (!COUNTS.contains(at.getAttributeLocalName(i))) {
        to.attribute(at, i);
      }
    }
    boolean added = false;
    while (XmlIn.nextChild(at)) {
      if (!at.getLocalName().equals("si") && !added) {
        addStrings(shapedPart, to);
        added = true;
      }
      to.element(at);
    }
    if (!added) {
      addStrings(shapedPart, to);
    }
    to.end();
  }

  private void addStrings(String shapedPart, XmlOut to) {
    shaped
        .zip()
        .xml(
            shapedPart,
            at -> {
              while (XmlIn.nextChild(at)) {
                if (at.getLocalName().equals("si")) {
                  to.element(at);
                } else {
                  XmlIn.skip(at);
                }
              }
              return null;
            });
  }

  /** A new sheet counts its strings from 0; in the result they follow those of the original. */
  private void moveStrings(String part) {
    shaped
        .zip()
        .xml(
            part,
            at -> {
              out.xml(part, to -> new StringMove(at, to, originalStrings).write());
              return null;
            });
  }

  private void hideNames(String part) {
    shaped
        .zip()
        .xml(
            part,
            at -> {
              out.xml(
                  part,
                  to -> {
                    to.start(at);
                    for (int depth = 1; depth > 0; ) {
                      at.next();
                      depth += to.event(at);
                      if (at.isStartElement() && isToBeHidden(at)) {
                        to.attribute("hidden", "1");
                      }
                    }
                  });
              return null;
            });
  }

  private boolean isToBeHidden(XMLStreamReader at) {
    String name = XmlIn.attribute(at, "name");
    return at.getLocalName().equals("definedName")
        && name != null
        && hidden.test(name)
        && XmlIn.attribute(at, "hidden") == null;
  }
}
