package org.wetmil.ledger;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Makes a ledger line of a record: each cell as its column is read, and what could not be. */
final class LineMaker {
  private static final Pattern BRACKET = Pattern.compile("[(\\[]([^)\\]]+)[)\\]]");

  static final HouseFigure AMOUNT_TOLERANCE =
      new HouseFigure(
          "Amount differs, share",
          "0.01",
          "of the amount",
          "tax, freight and rounding keep an amount from quantity times price by less");

  static final HouseFigure LEAST_DIFFERENCE =
      new HouseFigure(
          "Amount differs, least", "0.05", "", "the same in money; a note is made past both");

  private final String file;
  private final LedgerLayout layout;
  private final String headingUnit;

  LineMaker(String file, LedgerLayout layout) {
    this.file = file;
    this.layout = layout;
    this.headingUnit = headingUnit(layout);
  }

  /**
   * @param record which of the ledger it is, from 1
   * @param texts the cells that hold something
   */
  LedgerLine line(CsvText.Row row, long record, Map<LedgerColumn, String> texts) {
    List<LineProblem> problems = new ArrayList<>();
    lengths(row.fields(), problems);
    Numbers numbers = new Numbers(texts, problems);
    NumberColumn.Value quantity = numbers.read(LedgerColumn.QUANTITY);
    NumberColumn.Value price = numbers.read(LedgerColumn.UNIT_PRICE);
    NumberColumn.Value amount = numbers.read(LedgerColumn.AMOUNT);
    BigDecimal count = quantity == null ? null : quantity.number();
    BigDecimal each = price == null ? null : price.number();
    BigDecimal money = amount == null ? null : amount.number();
    BigDecimal product = count == null || each == null ? null : count.multiply(each);
    boolean computed = product != null && !texts.containsKey(LedgerColumn.AMOUNT);
    if (computed) {
      money = product.setScale(2, RoundingMode.HALF_UP);
    } else if (product != null && money != null && differs(product, money)) {
      problems.add(
          new LineProblem(
              LineProblem.Type.AMOUNT_DIFFERS,
              LedgerColumn.AMOUNT,
              texts.get(LedgerColumn.AMOUNT),
              product.stripTrailingZeros().toPlainString() + ", quantity times unit price"));
    }
    LineKind kind = kind(texts, count, money, problems);
    return new LedgerLine(
        file,
        row.line(),
        record,
        date(texts, problems),
        count,
        unitGal(texts, quantity),
        each,
        signed(kind, money),
        computed,
        currency(texts, amount, price),
        kind,
        Collections.unmodifiableMap(texts),
        List.copyOf(problems));
  }

  /** Reads number cells, each by the mark of its column. */
  private final class Numbers {
    private final Map<LedgerColumn, String> texts;
    private final List<LineProblem> problems;

    Numbers(Map<LedgerColumn, String> texts, List<LineProblem> problems) {
      this.texts = texts;
      this.problems = problems;
    }

    NumberColumn.Value read(LedgerColumn column) {
      String text = texts.get(column);
      if (text == null) {
        return null;
      }
      LedgerLayout.Mark mark = layout.marks().get(column);
      Optional<NumberColumn.Value> value =
          NumberColumn.read(text, mark)
              .filter(found -> found.word().isEmpty() || column == LedgerColumn.QUANTITY)
              .filter(
                  found ->
                      found.word().isEmpty()
                          || UnitText.gallons(found.word(), bought(texts)).isPresent());
      if (value.isEmpty()) {
        problems.add(
            new LineProblem(
                LineProblem.Type.UNREADABLE_NUMBER,
                column,
                text,
                mark == LedgerLayout.Mark.POINT
                    ? "a number such as 1,234.50"
                    : "a number such as 1.234,50, as the column has it"));
      }
      return value.orElse(null);
    }
  }

  private LocalDate date(Map<LedgerColumn, String> texts, List<LineProblem> problems) {
    String text = texts.get(LedgerColumn.DATE);
    if (text == null) {
      return null;
    }
    Optional<LocalDate> date = DateColumn.read(text, layout.dateOrder());
    if (date.isEmpty()) {
      boolean month = layout.dateOrder() == DateOrder.MONTH_FIRST;
      problems.add(
          new LineProblem(
              LineProblem.Type.UNREADABLE_DATE,
              LedgerColumn.DATE,
              text,
              "a date such as 2026-03-24 or " + (month ? "3/24/26" : "24/3/26")));
    }
    return date.orElse(null);
  }

  private double unitGal(Map<LedgerColumn, String> texts, NumberColumn.Value quantity) {
    String unit = texts.getOrDefault(LedgerColumn.UNIT, "");
    if (unit.isEmpty() && quantity != null) {
      unit = quantity.word();
    }
    OptionalDouble gallons = UnitText.gallons(unit.isEmpty() ? headingUnit : unit, bought(texts));
    return gallons.orElse(Double.NaN);
  }

  private static String bought(Map<LedgerColumn, String> texts) {
    return texts.getOrDefault(LedgerColumn.ITEM, "")
        + " "
        + texts.getOrDefault(LedgerColumn.DESCRIPTION, "");
  }

  /** The currency that a line names, beside its money or for itself; else the ledger's. */
  String currency(
      Map<LedgerColumn, String> texts, NumberColumn.Value amount, NumberColumn.Value price) {
    String stated = CurrencyName.of(texts.getOrDefault(LedgerColumn.CURRENCY, ""));
    if (!stated.isEmpty()) {
      return stated;
    }
    if (amount != null && !amount.currency().isEmpty()) {
      return amount.currency();
    }
    return price != null && !price.currency().isEmpty() ? price.currency() : layout.currency();
  }

  /** The kind by its word; without one by the signs, as a return is a negative purchase. */
  private static LineKind kind(
      Map<LedgerColumn, String> texts,
      BigDecimal quantity,
      BigDecimal amount,
      List<LineProblem> problems) {
    String text = texts.getOrDefault(LedgerColumn.TYPE, "");
    Optional<String> word = text.isEmpty() ? Optional.empty() : LedgerWords.kind(text);
    boolean negative = isNegative(quantity) || isNegative(amount);
    if (word.isEmpty() && !text.isEmpty()) {
      problems.add(
          new LineProblem(
              LineProblem.Type.UNKNOWN_KIND,
              LedgerColumn.TYPE,
              text,
              "purchase, return, transfer, left over, waste or opening stock"));
    }
    if (word.isEmpty() || word.get().equals("purchase")) {
      if (negative && word.isPresent()) {
        problems.add(
            new LineProblem(
                LineProblem.Type.READ_AS_RETURN,
                LedgerColumn.TYPE,
                text,
                "a return, since quantity or amount is negative"));
      }
      return negative ? LineKind.RETURN : LineKind.PURCHASE;
    }
    if (word.get().equals("transfer")) {
      return negative ? LineKind.TRANSFER_OUT : LineKind.TRANSFER_IN;
    }
    for (LineKind kind : LineKind.values()) {
      if (kind.title().equals(word.get())) {
        return kind;
      }
    }
    throw new IllegalStateException("ledger-words.csv: no kind " + word.get());
  }

  /** Money of what leaves the job, which some ledgers write without a sign. */
  private static BigDecimal signed(LineKind kind, BigDecimal money) {
    boolean leaves = kind == LineKind.RETURN || kind == LineKind.TRANSFER_OUT;
    return money != null && leaves ? money.abs().negate() : money;
  }

  private static boolean isNegative(BigDecimal number) {
    return number != null && number.signum() < 0;
  }

  private static boolean differs(BigDecimal product, BigDecimal amount) {
    BigDecimal difference = product.abs().subtract(amount.abs()).abs();
    return difference.compareTo(LEAST_DIFFERENCE.value()) > 0
        && difference.compareTo(amount.abs().multiply(AMOUNT_TOLERANCE.value())) > 0;
  }

  private void lengths(List<String> fields, List<LineProblem> problems) {
    int wanted = layout.headings().size();
    int lastKnown = layout.columns().values().stream().mapToInt(at -> at).max().orElse(0);
    if (fields.size() <= lastKnown) {
      problems.add(
          new LineProblem(
              LineProblem.Type.TOO_SHORT,
              null,
              fields.size() + " cells",
              wanted + " cells, as there are headings"));
    }
    if (fields.stream().skip(wanted).anyMatch(field -> !field.isBlank())) {
      problems.add(
          new LineProblem(
              LineProblem.Type.TOO_LONG,
              null,
              String.join(" | ", fields.subList(wanted, fields.size())),
              wanted + " cells, as there are headings"));
    }
    for (String field : fields) {
      if (field.indexOf('\n') >= 0 && field.lines().skip(1).anyMatch(this::looksLikeALine)) {
        problems.add(
            new LineProblem(
                LineProblem.Type.LINES_IN_A_CELL,
                null,
                field.lines().findFirst().orElse(""),
                "a quote that closes before the end of its line"));
      }
    }
  }

  private boolean looksLikeALine(String text) {
    long delimiters = text.chars().filter(c -> c == layout.delimiter()).count();
    return delimiters >= Math.max(2, layout.headings().size() - 1);
  }

  /** The unit that the heading of the quantity names in brackets; empty when it names none. */
  private static String headingUnit(LedgerLayout layout) {
    if (!layout.has(LedgerColumn.QUANTITY)) {
      return "";
    }
    Matcher bracket =
        BRACKET.matcher(layout.headings().get(layout.columns().get(LedgerColumn.QUANTITY)));
    return bracket.find() && LedgerWords.unit(bracket.group(1)).isPresent() ? bracket.group(1) : "";
  }
}
