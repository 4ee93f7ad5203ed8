package org.wetmil.ledger;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** Tells the lines of a ledger from its titles, blank lines and totals, and counts each. */
final class LedgerReader {
  private final String file;
  private final LedgerLayout layout;
  private final Consumer<LedgerLine> sink;
  private final LineMaker maker;
  private final List<TotalsLine> totals = new ArrayList<>();
  private final RunningSums sums = new RunningSums();
  private long record;
  private long lines;
  private long titles;
  private long blanks;

  LedgerReader(String file, LedgerLayout layout, Consumer<LedgerLine> sink) {
    this.file = file;
    this.layout = layout;
    this.sink = sink;
    this.maker = new LineMaker(file, layout);
  }

  LedgerCounts counts() {
    return new LedgerCounts(lines, titles, blanks, totals);
  }

  void take(CsvText.Row row) {
    record++;
    List<String> fields = row.fields();
    if (fields.stream().allMatch(String::isBlank)) {
      blanks++;
      return;
    }
    if (record <= layout.headingRecord() || fields.equals(layout.headings())) {
      titles += record == layout.headingRecord() ? 0 : 1;
      return;
    }
    Map<LedgerColumn, String> texts = new EnumMap<>(LedgerColumn.class);
    layout
        .columns()
        .forEach(
            (column, at) -> {
              if (at < fields.size() && !fields.get(at).isBlank()) {
                texts.put(column, fields.get(at).strip());
              }
            });
    if (isTotals(fields, texts)) {
      total(row, texts);
    } else if (isGroupTitle(fields, texts)) {
      titles++;
    } else {
      LedgerLine line = maker.line(row, record, texts);
      lines++;
      sums.add(line.currency(), line.amount());
      sink.accept(line);
    }
  }

  /** A totals word in the first cell that holds anything, whatever column that is. */
  private boolean isTotals(List<String> fields, Map<LedgerColumn, String> texts) {
    String first = fields.stream().filter(field -> !field.isBlank()).findFirst().orElseThrow();
    return LedgerWords.isTotal(first)
        && !hasDate(texts)
        && !texts.containsKey(LedgerColumn.UNIT)
        && !texts.containsKey(LedgerColumn.UNIT_PRICE);
  }

  /** One cell alone, that is neither a date nor a number: the name of the group that follows. */
  private boolean isGroupTitle(List<String> fields, Map<LedgerColumn, String> texts) {
    return fields.stream().filter(field -> !field.isBlank()).count() == 1
        && !hasDate(texts)
        && texts.keySet().stream().noneMatch(LedgerColumn::isNumber);
  }

  private boolean hasDate(Map<LedgerColumn, String> texts) {
    String text = texts.get(LedgerColumn.DATE);
    return text != null && DateColumn.read(text, layout.dateOrder()).isPresent();
  }

  private void total(CsvText.Row row, Map<LedgerColumn, String> texts) {
    NumberColumn.Value stated =
        Optional.ofNullable(texts.get(LedgerColumn.AMOUNT))
            .flatMap(text -> NumberColumn.read(text, layout.marks().get(LedgerColumn.AMOUNT)))
            .orElse(null);
    String text = String.join(" ", row.fields().stream().filter(f -> !f.isBlank()).toList());
    String currency = maker.currency(texts, stated, null);
    totals.add(
        new TotalsLine(
            file,
            row.line(),
            text,
            stated == null ? null : stated.number(),
            sums.ofAll(currency),
            sums.sinceLast(currency)));
    sums.begin();
  }
}
