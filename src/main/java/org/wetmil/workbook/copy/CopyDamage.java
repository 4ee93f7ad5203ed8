package org.wetmil.workbook.copy;

import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.opc.XmlIn;
import org.wetmil.workbook.opc.ZipPackage;

/** What is wrong with a workbook that the library stumbled over. */
final class CopyDamage {
  private CopyDamage() {}

  /** The library does not say in which part it was, so the parts are read once more. */
  static WorkbookException found(ZipPackage original, Throwable e) {
    for (String part : original.names()) {
      if (part.endsWith(".xml") || part.endsWith(".rels")) {
        try {
          original.xml(part, XmlIn::end);
        } catch (WorkbookException found) {
          found.addSuppressed(e);
          return found;
        }
      }
    }
    return new WorkbookException.Damaged(
        original.file(), "a part other than its rows", "it contradicts the rest", e);
  }
}
