package org.wetmil.jobs.audit;

import java.util.ArrayList;
import java.util.List;
import org.wetmil.workbook.audit.AuditFinding;

/** What is wrong with a past bid itself, whatever the job came to. */
final class Mistakes {
  private Mistakes() {}

  static List<AuditFinding> of(PastBook book) {
    List<AuditFinding> findings = new ArrayList<>();
    if (book.price() != null && book.price().isBelowDirect()) {
      findings.add(
          new AuditFinding(
              book.name(),
              "",
              "below cost",
              "The price of %s before tax is under the direct cost of %s."
                  .formatted(
                      book.price().beforeTax().toPlainString(),
                      book.price().direct().toPlainString())));
    }
    if (book.notFilled() > 0) {
      findings.add(
          new AuditFinding(
              book.name(),
              "",
              "lines not filled",
              "%d of %d lines have no paint and hours, so that a figure for the whole job cannot be compared; fill the bid to see why."
                  .formatted(book.notFilled(), book.read())));
    }
    book.mistakes()
        .forEach(
            mistake ->
                findings.add(
                    new AuditFinding(
                        book.name(),
                        mistake.sheet() + "!" + mistake.address(),
                        mistake.kind(),
                        mistake.message())));
    return findings;
  }
}
