package org.wetmil.jobs.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import org.wetmil.catalogue.Setting;
import org.wetmil.checks.Finding;
import org.wetmil.checks.Severity;
import org.wetmil.estimate.Figure;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.jobs.FillReport;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/**
 * One filled workbook as JSON. Numbers are as computed, unrounded; what is not known is left out.
 */
final class JsonWorkbook {
  private final JsonGenerator out;

  JsonWorkbook(JsonGenerator out) {
    this.out = out;
  }

  void write(FillReport report) throws IOException {
    out.writeStartObject();
    out.writeStringField("input", report.input().toString());
    out.writeStringField("output", report.output().toString());
    out.writeStringField("sha256", report.sha256());
    out.writeStringField("job", report.bid().bid().job());
    out.writeStringField("units", units(report.system()));
    stated("currency", report.bid().bid().catalogue().text(Setting.CURRENCY));
    totals(report);
    out.writeArrayFieldStart("lines");
    for (FilledLine line : (Iterable<FilledLine>) report.bid().lines()::iterator) {
      line(line);
    }
    out.writeEndArray();
    out.writeArrayFieldStart("findings");
    for (FillReport.Located found : report.located()) {
      finding(found);
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private void totals(FillReport report) throws IOException {
    out.writeObjectFieldStart("totals");
    out.writeNumberField("rows", report.rows());
    out.writeNumberField("filled", report.filled());
    out.writeNumberField("notFilled", report.notFilled());
    out.writeNumberField("leftOut", report.leftOut());
    Map<Severity, Integer> counts = report.counts();
    for (Severity severity : Severity.values()) {
      out.writeNumberField(word(severity) + "s", counts.getOrDefault(severity, 0));
    }
    number("paint", report.paint(), Quantity.VOLUME.unit(report.system()));
    number("labour", report.hours(), Unit.HOUR);
    out.writeEndObject();
  }

  private void line(FilledLine line) throws IOException {
    out.writeStartObject();
    out.writeStringField("sheet", line.line().sheet());
    out.writeNumberField("row", line.line().row());
    out.writeStringField("room", line.line().text(InputColumn.ROOM));
    out.writeStringField("surface", line.line().text(InputColumn.SURFACE));
    out.writeStringField("units", units(line.system()));
    out.writeBooleanField("filled", line.isFilled());
    out.writeBooleanField("counted", line.isCounted());
    out.writeObjectFieldStart("figures");
    for (FilledColumn column : FilledColumn.values()) {
      figure(column, line.figures().get(column), line.system());
    }
    out.writeEndObject();
    out.writeEndObject();
  }

  private void figure(FilledColumn column, Figure figure, UnitSystem system) throws IOException {
    if (figure instanceof Figure.Word word) {
      text(key(column), word.text());
    } else if (figure != null && Double.isFinite(figure.number())) {
      if (column.quantity() == Quantity.TEXT) {
        // a tip code is a name that happens to be written in digits
        text(key(column), Long.toString(Math.round(figure.number())));
      } else {
        number(key(column), figure.number(), column.quantity().unit(system));
      }
    }
  }

  private void finding(FillReport.Located found) throws IOException {
    Finding finding = found.finding();
    out.writeStartObject();
    out.writeStringField("check", finding.check());
    out.writeStringField("severity", word(finding.severity()));
    stated("sheet", finding.spot().sheet());
    stated("cell", found.address());
    if (finding.spot().row() > 0) {
      out.writeNumberField("row", finding.spot().row());
    }
    if (finding.spot().column() != null) {
      out.writeStringField("column", finding.spot().column().heading());
    }
    stated("room", finding.room());
    stated("surface", finding.surface());
    stated("measured", finding.measured());
    stated("limit", finding.limit());
    out.writeStringField("message", finding.message());
    out.writeEndObject();
  }

  private void number(String key, double value, Unit unit) throws IOException {
    out.writeObjectFieldStart(key);
    out.writeNumberField("value", value);
    stated("unit", unit.symbol());
    out.writeEndObject();
  }

  private void text(String key, String value) throws IOException {
    out.writeObjectFieldStart(key);
    out.writeStringField("value", value);
    out.writeEndObject();
  }

  private void stated(String key, String text) throws IOException {
    if (!text.isEmpty()) {
      out.writeStringField(key, text);
    }
  }

  /** The heading of a column as one word: Wet film per coat becomes wetFilmPerCoat. */
  static String key(FilledColumn column) {
    StringBuilder key = new StringBuilder();
    for (String word : column.heading().toLowerCase(Locale.ROOT).split("[^a-z0-9]+")) {
      key.append(key.isEmpty() ? word.charAt(0) : Character.toUpperCase(word.charAt(0)));
      key.append(word.substring(1));
    }
    return key.toString();
  }

  private static String units(UnitSystem system) {
    return system.name().toLowerCase(Locale.ROOT);
  }

  private static String word(Severity severity) {
    return severity.name().toLowerCase(Locale.ROOT);
  }
}
