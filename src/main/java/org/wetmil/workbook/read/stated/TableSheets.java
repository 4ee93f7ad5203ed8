package org.wetmil.workbook.read.stated;

import java.util.List;
import java.util.Optional;
import org.wetmil.catalogue.Tables;
import org.wetmil.workbook.read.words.Words;

/** Which table a sheet is for, by its name. */
public final class TableSheets {
  private static final List<List<String>> OTHER = Words.list("sheet-names.csv", 2);

  private TableSheets() {}

  /** The table that a sheet of this name adds to; empty when it is none of them. */
  public static Optional<Tables> find(String sheet) {
    return Tables.find(sheet)
        .or(
            () ->
                OTHER.stream()
                    .filter(row -> Words.key(row.get(1)).equals(Words.key(sheet)))
                    .findFirst()
                    .flatMap(row -> Tables.find(row.get(0))));
  }
}
