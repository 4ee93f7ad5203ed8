package org.wetmil.cli;

import java.util.Locale;
import org.wetmil.ledger.DateOrder;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the word for the order of day and month. */
final class DateOrderWord implements ITypeConverter<DateOrder> {
  @Override
  public DateOrder convert(String word) {
    return switch (word.toLowerCase(Locale.ROOT)) {
      case "month-first" -> DateOrder.MONTH_FIRST;
      case "day-first" -> DateOrder.DAY_FIRST;
      default ->
          throw new TypeConversionException("expected month-first or day-first, not " + word);
    };
  }
}
