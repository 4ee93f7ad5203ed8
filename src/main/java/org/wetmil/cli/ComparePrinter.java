package org.wetmil.cli;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.compare.Amounts;
import org.wetmil.estimate.compare.BidComparison;
import org.wetmil.estimate.compare.CompareWords;
import org.wetmil.estimate.compare.InputChange;
import org.wetmil.estimate.compare.LineChange;
import org.wetmil.estimate.compare.Split;
import org.wetmil.estimate.compare.TableChange;
import org.wetmil.jobs.CompareReport;
import org.wetmil.quantity.Quantity;
import org.wetmil.workbook.compare.Version;

/** Prints a comparison: what both come to, what the difference comes from, then each change. */
final class ComparePrinter {
  private final PrintWriter out;
  private final CompareReport report;
  private final BidComparison compared;

  ComparePrinter(PrintWriter out, CompareReport report) {
    this.out = out;
    this.report = report;
    this.compared = report.compared();
  }

  void print(boolean quiet) {
    version("A", report.a());
    version("B", report.b());
    totals();
    if (!quiet) {
      CompareWords.notes(compared).forEach(note -> Printer.line(out, note));
      if (!compared.isSame()) {
        split();
        tables();
        lines("Lines changed", compared.changed());
        lines("Lines only in B", compared.onlyB());
        lines("Lines only in A", compared.onlyA());
      }
    }
    Printer.line(
        out,
        report.output() == null
            ? "no workbook is written, since a protected bid would be open in it; name one with"
                + " --out to have it"
            : report.output() + ": the comparison on one sheet");
    out.flush();
  }

  private void version(String letter, Version version) {
    Printer.line(out, letter + "  " + version.file() + (version.filled() ? ": filled before" : ""));
  }

  private void totals() {
    row("", "A", "B", "B less A", "");
    double paintA = shown(Quantity.VOLUME, compared.first().paintGal());
    double paintB = shown(Quantity.VOLUME, compared.second().paintGal());
    row("Paint", plain(paintA), plain(paintB), signed(paintB, paintA), unit(Quantity.VOLUME));
    double hoursA = compared.first().hours();
    double hoursB = compared.second().hours();
    row("Hours", plain(hoursA), plain(hoursB), signed(hoursB, hoursA), "h");
    if (compared.isPriced()) {
      BigDecimal a = compared.first().price().orElseThrow().beforeTax();
      BigDecimal b = compared.second().price().orElseThrow().beforeTax();
      row(
          "Price before tax",
          a.setScale(2, RoundingMode.HALF_UP).toPlainString(),
          b.setScale(2, RoundingMode.HALF_UP).toPlainString(),
          String.format(Locale.ROOT, "%+.2f", b.subtract(a)),
          compared.currency());
    }
  }

  private void row(String label, String a, String b, String more, String unit) {
    Printer.line(
        out,
        String.format(Locale.ROOT, "%-18s %12s %12s %12s %s", label, a, b, more, unit)
            .stripTrailing());
  }

  /** The parts as they are shown, and what rounding them leaves. */
  private void split() {
    Printer.line(out, "");
    Printer.line(out, "Of the difference");
    part("", "paint " + unit(Quantity.VOLUME), "hours", compared.isPriced() ? "price" : "");
    BigDecimal paint =
        hundredths(
            shown(Quantity.VOLUME, compared.second().paintGal())
                - shown(Quantity.VOLUME, compared.first().paintGal()));
    BigDecimal hours = hundredths(compared.second().hours() - compared.first().hours());
    for (Split part : Split.of(compared)) {
      if (!part.isThere() || (part.kind() == Split.Kind.PRICE && !compared.isPriced())) {
        continue;
      }
      BigDecimal paintShown = hundredths(shown(Quantity.VOLUME, part.paintGal()));
      BigDecimal hoursShown = hundredths(part.hours());
      paint = paint.subtract(paintShown);
      hours = hours.subtract(hoursShown);
      boolean counts = part.kind() != Split.Kind.PRICE;
      part(
          CompareWords.label(part),
          counts ? String.format(Locale.ROOT, "%+.2f", paintShown) : "",
          counts ? String.format(Locale.ROOT, "%+.2f", hoursShown) : "",
          part.price() == null || !compared.isPriced()
              ? ""
              : String.format(Locale.ROOT, "%+.2f", part.price()));
    }
    if (paint.signum() != 0 || hours.signum() != 0) {
      part(
          "rounding of what is shown",
          String.format(Locale.ROOT, "%+.2f", paint),
          String.format(Locale.ROOT, "%+.2f", hours),
          "");
    }
  }

  private void part(String label, String paint, String hours, String price) {
    Printer.line(
        out,
        String.format(Locale.ROOT, "  %-64s %9s %9s %12s", label, paint, hours, price)
            .stripTrailing());
  }

  private void tables() {
    if (compared.tables().isEmpty()) {
      return;
    }
    Printer.line(out, "");
    Printer.line(out, "Settings and tables");
    for (TableChange change : compared.tables()) {
      String figure = change.figure().isEmpty() ? "" : ", " + change.figure();
      Printer.line(
          out,
          "  %s, %s%s: %s -> %s (%s)"
              .formatted(
                  change.table().title(),
                  change.row(),
                  figure,
                  change.from(),
                  change.to(),
                  where(change)));
    }
  }

  private static String where(TableChange change) {
    String from = change.whereFrom().isEmpty() ? "not in A" : "A: " + change.whereFrom();
    return from + "; " + (change.whereTo().isEmpty() ? "not in B" : "B: " + change.whereTo());
  }

  private void lines(String title, List<LineChange> lines) {
    if (lines.isEmpty()) {
      return;
    }
    Printer.line(out, "");
    Printer.line(out, title);
    for (LineChange line : lines) {
      Printer.line(out, "  " + place(line, null) + "  " + name(line.line()) + ": " + effect(line));
      for (InputChange input : line.inputs()) {
        Printer.line(
            out,
            "      %s: %s -> %s (%s)"
                .formatted(input.heading(), input.from(), input.to(), place(line, input.column())));
      }
      if (line.inputs().isEmpty() && line.a() != null && line.b() != null) {
        boolean sameUnits = compared.a().system() == compared.b().system();
        Printer.line(
            out,
            "      no input of its own: "
                + (sameUnits
                    ? "other lines now bear what is listed for it"
                    : "what is stated without a unit, as container sizes, means other units in B"));
      }
    }
  }

  private String place(LineChange line, InputColumn column) {
    String a = line.a() == null ? "" : report.a().address(line.a(), column);
    String b = line.b() == null ? "" : report.b().address(line.b(), column);
    return a.isEmpty() || b.isEmpty() || a.equals(b) ? (b.isEmpty() ? a : b) : a + " -> " + b;
  }

  private static String name(BidLine line) {
    return Stream.of(InputColumn.FLOOR, InputColumn.ROOM, InputColumn.SURFACE, InputColumn.COATING)
        .map(line::text)
        .filter(word -> !word.isEmpty())
        .collect(Collectors.joining(", "));
  }

  private String effect(LineChange line) {
    Amounts effect = line.effect();
    if (effect.isNothing()) {
      return "makes no difference";
    }
    String cost =
        compared.oneCurrency() && effect.cost() != 0
            ? String.format(Locale.ROOT, ", cost %+.2f %s", effect.cost(), compared.currency())
                .stripTrailing()
            : "";
    return String.format(
        Locale.ROOT,
        "area %+.1f %s, paint %+.2f %s, hours %+.2f%s",
        shown(Quantity.AREA, effect.areaFt2()),
        unit(Quantity.AREA),
        shown(Quantity.VOLUME, effect.paintGal()),
        unit(Quantity.VOLUME),
        effect.hours(),
        cost);
  }

  private static String plain(double number) {
    return String.format(Locale.ROOT, "%.2f", number);
  }

  private static String signed(double b, double a) {
    return String.format(Locale.ROOT, "%+.2f", hundredths(b - a));
  }

  private static BigDecimal hundredths(double number) {
    return BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_UP);
  }

  private String unit(Quantity quantity) {
    return quantity.unit(compared.system()).symbol();
  }

  private double shown(Quantity quantity, double base) {
    return quantity.shown(base, compared.system());
  }
}
