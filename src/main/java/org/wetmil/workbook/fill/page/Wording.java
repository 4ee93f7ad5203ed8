package org.wetmil.workbook.fill.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.Properties;
import java.util.stream.Stream;

/**
 * The words of pages that a crew reads, in the language of the crew. A language is a file of its
 * name, and a word of the setting Crew language.
 */
final class Wording {
  private final Properties words = new Properties();

  private Wording(String language) {
    String file = "wording_" + language + ".properties";
    try (InputStream in = Wording.class.getResourceAsStream(file)) {
      words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The wording for a language as a setting names it. */
  static Wording of(String language) {
    return new Wording(language.toLowerCase(Locale.ROOT));
  }

  /** The language, by its ISO 639 code. */
  String language() {
    return get("language");
  }

  String get(String key) {
    String text = words.getProperty(key);
    if (text == null) {
      throw new IllegalArgumentException("no wording for " + key);
    }
    return text;
  }

  String get(String key, Object... values) {
    return new MessageFormat(get(key), Locale.ROOT)
        .format(Stream.of(values).map(String::valueOf).toArray());
  }
}
