package org.wetmil.workbook.audit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.audit.MeasureAudit;
import org.wetmil.audit.model.JudgedEffect;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.ratio.GroupRatio;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;

/** The list of groups, one a row for each measure. */
final class GroupsSheet {
  private static final String[] HEADINGS = {
    "Measure",
    "Grouped by",
    "Group",
    "Jobs",
    "Ratio (actual/bid)",
    "Low",
    "High",
    "Median",
    "Unit",
    "Bid",
    "Taken",
    "Taken/bid",
    "Ratio on its own account",
    "Chance of luck",
    "Never apart from"
  };
  private static final int[] WIDTHS = {9, 20, 34, 7, 11, 8, 8, 8, 6, 10, 10, 10, 13, 10, 30};

  private final XSSFSheet sheet;
  private final Look look;
  private final AuditBook book;

  GroupsSheet(XSSFSheet sheet, Look look, AuditBook book) {
    this.sheet = sheet;
    this.look = look;
    this.book = book;
  }

  void write() {
    Rows rows = ListSheet.begin(sheet, look, HEADINGS, WIDTHS);
    for (MeasureAudit audit : book.audit().measures()) {
      Stream.concat(Stream.of(audit.ratios().all()), audit.ratios().groups().stream())
          .forEach(group -> group(rows, audit, group));
    }
    ListSheet.end(sheet, look, HEADINGS.length, rows);
  }

  private void group(Rows rows, MeasureAudit audit, GroupRatio group) {
    Measure measure = audit.measure();
    rows.row()
        .text(measure.word(), look.text(false))
        .text(group.by() == null ? "All" : group.by().title(), look.text(false))
        .text(group.by() == null ? "all bids" : group.group(), look.strong())
        .number(group.jobs(), look.number(0))
        .number(group.ratio(), look.number(2))
        .number(group.likely().low(), look.number(2))
        .number(group.likely().high(), look.number(2))
        .number(group.median(), look.number(2))
        .text(measure.quantity().unit(book.system()).symbol(), look.aside())
        .number(JobsSheet.shown(measure, group.estimated(), book.system()), look.number(1))
        .number(JobsSheet.shown(measure, group.actual(), book.system()), look.number(1))
        .formula("K" + rows.number() + "/J" + rows.number(), group.ratioOfSums(), look.number(2));
    Optional<JudgedEffect> effect = effect(audit, group);
    rows.number(effect.map(JudgedEffect::ratio).orElse(Double.NaN), look.number(2))
        .number(
            effect.map(JudgedEffect::adjustedChance).orElse(group.adjustedChance()), look.number(3))
        .text(apart(audit, group), look.aside());
  }

  private static Optional<JudgedEffect> effect(MeasureAudit audit, GroupRatio group) {
    return audit.effects().stream()
        .filter(one -> one.effect().by() == group.by())
        .filter(one -> one.effect().group().equals(group.group()))
        .findFirst();
  }

  private static String apart(MeasureAudit audit, GroupRatio group) {
    List<String> partners =
        audit.inseparable().stream()
            .filter(pair -> group.by() != null && pair.names(group.by(), group.group()))
            .map(pair -> pair.partnerOf(group.by(), group.group()))
            .toList();
    return String.join(", ", partners);
  }
}
