package org.wetmil.workbook.read.words;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.wetmil.catalogue.Names;
import org.wetmil.ledger.CsvText;

/** The lists of words that come with the program, and how words are compared. */
public final class Words {
  private static final String FOLDER = "/org/wetmil/workbook/read/";

  private static final Pattern MARKS = Pattern.compile("[.:;*!?\"'’´`(){}\\[\\]_-]+");

  private Words() {}

  /** The records of a list of words without its comments and its heading line. */
  public static List<List<String>> list(String file, int width) {
    try (InputStream stream = Words.class.getResourceAsStream(FOLDER + file)) {
      if (stream == null) {
        throw new IllegalStateException("no resource " + file);
      }
      BufferedReader reader =
          new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
      // Comment lines become blank ones, so that line numbers stay those of the file.
      String body =
          reader
              .lines()
              .map(line -> line.startsWith("#") ? "" : line)
              .collect(Collectors.joining("\n"));
      List<CsvText.Row> rows = CsvText.rows(new StringReader(body));
      for (CsvText.Row row : rows) {
        if (row.fields().size() != width) {
          throw new IllegalStateException(file + ", line " + row.line() + ": odd");
        }
      }
      return rows.stream().skip(1).map(CsvText.Row::fields).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(file, e);
    }
  }

  /** What two spellings of one word have in common: marks and dots do not count. */
  public static String key(String word) {
    return Names.key(MARKS.matcher(word.toLowerCase(Locale.ROOT)).replaceAll(" ").strip());
  }
}
