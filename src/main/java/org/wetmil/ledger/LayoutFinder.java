package org.wetmil.ledger;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVException;

/** Finds out how a ledger is written: encoding, delimiter, headings, order of dates, marks. */
final class LayoutFinder {
  private static final int HEAD_CHARS = 1 << 16;
  private static final int HEAD_RECORDS = 100;
  private static final Pattern BRACKET = Pattern.compile("[(\\[]([^)\\]]+)[)\\]]");

  private final String file;
  private final LedgerSource source;
  private final TextEncoding encoding;
  private final List<LedgerNote> notes = new ArrayList<>();
  private DateColumn dates = new DateColumn();
  private final Map<LedgerColumn, NumberColumn> numbers = new EnumMap<>(LedgerColumn.class);
  private CurrencyMarks currencies = new CurrencyMarks();

  LayoutFinder(String file, LedgerSource source, TextEncoding encoding) {
    this.file = file;
    this.source = source;
    this.encoding = encoding;
  }

  /** The row that reads most like headings, under one delimiter. */
  private record Candidate(
      char delimiter,
      long record,
      List<String> headings,
      Map<LedgerColumn, Integer> columns,
      int german) {
    /** An item and a figure make a ledger. */
    boolean isUsable() {
      boolean item =
          columns.containsKey(LedgerColumn.ITEM) || columns.containsKey(LedgerColumn.DESCRIPTION);
      return item && columns.keySet().stream().anyMatch(LedgerColumn::isNumber);
    }
  }

  LedgerLayout find(DateOrder statedOrder) throws IOException, UnusableLedgerException {
    Candidate best = bestHeadings(head());
    boolean quotes = true;
    try {
      survey(best, true);
    } catch (CSVException e) {
      quotes = false;
      note(LedgerNote.Type.QUOTES_AS_TEXT, "a quote is opened and never closed");
      // all lines are seen again
      dates = new DateColumn();
      numbers.clear();
      currencies = new CurrencyMarks();
      survey(best, false);
    }
    String headingCurrency = headingCurrency(best);
    List<String> unused = new ArrayList<>();
    for (int i = 0; i < best.headings().size(); i++) {
      if (!best.columns().containsValue(i) && !best.headings().get(i).isBlank()) {
        unused.add(best.headings().get(i));
      }
    }
    return new LedgerLayout(
        encoding.charset(),
        best.delimiter(),
        quotes,
        best.headings(),
        best.record(),
        best.columns(),
        unused,
        order(statedOrder, best),
        marks(best),
        headingCurrency.isEmpty() ? currencies.ofTheRest() : headingCurrency,
        List.copyOf(notes));
  }

  private String head() throws IOException {
    char[] chars = new char[HEAD_CHARS];
    int length = 0;
    try (Reader reader = encoding.open(source)) {
      int read = reader.read(chars, 0, HEAD_CHARS);
      while (read > 0) {
        length += read;
        read = reader.read(chars, length, HEAD_CHARS - length);
      }
    }
    return new String(chars, 0, length);
  }

  private Candidate bestHeadings(String head) throws IOException, UnusableLedgerException {
    if (head.isBlank()) {
      throw new UnusableLedgerException(file + " holds nothing.");
    }
    Candidate best = null;
    for (char delimiter : TextTable.DELIMITERS) {
      Candidate candidate = headings(delimiter, head);
      if (best == null
          || candidate.columns().size() > best.columns().size()
          || (candidate.columns().size() == best.columns().size()
              && candidate.headings().size() > best.headings().size())) {
        best = candidate;
      }
    }
    if (!best.isUsable()) {
      throw new UnusableLedgerException(
          file
              + " has no line of headings with an Item or Description and a Quantity or Amount;"
              + " the most like headings is: "
              + UnusableLedgerException.row(best.headings())
              + ".");
    }
    return best;
  }

  private static Candidate headings(char delimiter, String head) throws IOException {
    List<Candidate> rows = new ArrayList<>();
    try {
      CsvText.forEach(
          new StringReader(head),
          delimiter,
          true,
          row -> {
            if (rows.size() < HEAD_RECORDS) {
              rows.add(candidate(delimiter, rows.size() + 1L, row.fields()));
            }
          });
    } catch (CSVException e) {
      // the head may end inside a quoted field; the rows before it are enough
    }
    Candidate best = new Candidate(delimiter, 0, List.of(), Map.of(), 0);
    for (Candidate row : rows) {
      boolean longer = row.columns().isEmpty() && row.headings().size() > best.headings().size();
      if (row.columns().size() > best.columns().size() || (best.columns().isEmpty() && longer)) {
        best = row;
      }
    }
    return best;
  }

  private static Candidate candidate(char delimiter, long record, List<String> fields) {
    Map<LedgerColumn, Integer> columns = new EnumMap<>(LedgerColumn.class);
    Map<LedgerColumn, Integer> orders = new EnumMap<>(LedgerColumn.class);
    int german = 0;
    for (int i = 0; i < fields.size(); i++) {
      Optional<LedgerWords.Heading> heading = LedgerWords.heading(fields.get(i));
      if (heading.isPresent()) {
        LedgerColumn column = heading.get().column();
        german += heading.get().language().equals("de") ? 1 : 0;
        if (heading.get().order() < orders.getOrDefault(column, Integer.MAX_VALUE)) {
          orders.put(column, heading.get().order());
          columns.put(column, i);
        }
      }
    }
    return new Candidate(delimiter, record, fields, columns, german);
  }

  private void survey(Candidate best, boolean quotes) throws IOException {
    long[] record = {0};
    CsvText.forEach(
        encoding.open(source),
        best.delimiter(),
        quotes,
        row -> {
          record[0]++;
          if (record[0] > best.record()) {
            best.columns().forEach((column, at) -> see(column, at, row.fields()));
            currency(best.columns(), row.fields());
          }
        });
  }

  private void see(LedgerColumn column, int at, List<String> fields) {
    String text = text(at, fields);
    if (text.isEmpty()) {
      return;
    }
    if (column == LedgerColumn.DATE) {
      dates.see(text);
    } else if (column.isNumber()) {
      numbers.computeIfAbsent(column, c -> new NumberColumn()).see(text);
    }
  }

  private void currency(Map<LedgerColumn, Integer> columns, List<String> fields) {
    String stated = text(columns.get(LedgerColumn.CURRENCY), fields);
    String amount = text(columns.get(LedgerColumn.AMOUNT), fields);
    String price = text(columns.get(LedgerColumn.UNIT_PRICE), fields);
    if (!amount.isEmpty() || !price.isEmpty()) {
      currencies.see(
          Stream.of(
                  CurrencyName.of(stated),
                  NumberColumn.currency(amount),
                  NumberColumn.currency(price))
              .filter(name -> !name.isEmpty())
              .findFirst()
              .orElse(""));
    }
  }

  private static String text(Integer at, List<String> fields) {
    return at == null || at >= fields.size() ? "" : fields.get(at).strip();
  }

  private static String headingCurrency(Candidate best) {
    for (LedgerColumn column : List.of(LedgerColumn.AMOUNT, LedgerColumn.UNIT_PRICE)) {
      if (best.columns().containsKey(column)) {
        Matcher bracket = BRACKET.matcher(best.headings().get(best.columns().get(column)));
        String found = bracket.find() ? CurrencyName.of(bracket.group(1).strip()) : "";
        if (NumberColumn.isCurrency(found) || found.equals("$")) {
          return found;
        }
      }
    }
    return "";
  }

  /** Day first where the headings are not English (house), else month first. */
  private DateOrder order(DateOrder stated, Candidate best) {
    if (stated != null) {
      return stated;
    }
    if (dates.isMixed()) {
      note(LedgerNote.Type.ORDER_MIXED, "some dates are written day first and some month first");
    }
    Optional<DateOrder> shown = dates.shown();
    if (shown.isPresent()) {
      return shown.get();
    }
    boolean dayFirst = isGerman(best) || best.delimiter() == ';';
    DateOrder assumed = dayFirst ? DateOrder.DAY_FIRST : DateOrder.MONTH_FIRST;
    if (dates.isAmbiguous()) {
      note(
          LedgerNote.Type.ORDER_ASSUMED,
          "no date shows whether the day or the month stands first; read with the "
              + (dayFirst ? "day" : "month")
              + " first");
    }
    return assumed;
  }

  /** What the column shows; else what the other number columns show; else the usual mark. */
  private Map<LedgerColumn, LedgerLayout.Mark> marks(Candidate best) {
    NumberColumn all = new NumberColumn();
    numbers.values().forEach(all::add);
    boolean comma = isGerman(best) || best.delimiter() == ';';
    LedgerLayout.Mark usual = comma ? LedgerLayout.Mark.COMMA : LedgerLayout.Mark.POINT;
    Map<LedgerColumn, LedgerLayout.Mark> marks = new EnumMap<>(LedgerColumn.class);
    boolean assumed = false;
    for (LedgerColumn column : LedgerColumn.values()) {
      if (column.isNumber()) {
        NumberColumn seen = numbers.getOrDefault(column, new NumberColumn());
        marks.put(column, seen.shown().or(all::shown).orElse(usual));
        assumed |= seen.isAmbiguous() && seen.shown().or(all::shown).isEmpty();
      }
    }
    if (assumed) {
      note(
          LedgerNote.Type.MARK_ASSUMED,
          "no number shows which mark stands before the decimals; read with a decimal "
              + (comma ? "comma" : "point"));
    }
    return marks;
  }

  private static boolean isGerman(Candidate best) {
    return best.german() * 2 > best.columns().size();
  }

  private void note(LedgerNote.Type type, String detail) {
    notes.add(new LedgerNote(file, type, detail));
  }
}
