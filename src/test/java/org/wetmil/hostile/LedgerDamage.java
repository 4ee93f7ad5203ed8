package org.wetmil.hostile;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** What is done to a ledger of separated text. */
enum LedgerDamage {
  CELL {
    @Override
    String to(String text, Random random) {
      String word = Nasty.any(random);
      String quoted = random.nextBoolean() ? "\"" + word.replace("\"", "\"\"") + "\"" : word;
      return XmlDamage.replaced(text, "(?<=[,;\n])[^,;\n]*(?=[,;\n])", random, quoted);
    }
  },
  QUOTE {
    @Override
    String to(String text, Random random) {
      int at = random.nextInt(text.length());
      return text.substring(0, at) + "\"" + text.substring(at);
    }
  },
  LINES_SHUFFLED {
    @Override
    String to(String text, Random random) {
      List<String> lines = new ArrayList<>(text.lines().toList());
      Collections.shuffle(lines, random);
      return String.join("\n", lines);
    }
  },
  LINES_REPEATED {
    @Override
    String to(String text, Random random) {
      return text.repeat(2 + random.nextInt(4));
    }
  },
  SEPARATOR {
    @Override
    String to(String text, Random random) {
      List<String> others = List.of(";", "\t", "|", ",,", "\r", "\u0000");
      return text.replace(",", others.get(random.nextInt(others.size())));
    }
  },
  HEADINGS_GONE {
    @Override
    String to(String text, Random random) {
      return text.substring(text.indexOf('\n') + 1);
    }
  },
  LONG_LINE {
    @Override
    String to(String text, Random random) {
      return text + "x,".repeat(200_000) + "\n" + text;
    }
  },
  CHARSET {
    @Override
    String to(String text, Random random) {
      return "\uFEFF" + new String(text.getBytes(StandardCharsets.UTF_16), StandardCharsets.UTF_8);
    }
  };

  abstract String to(String text, Random random);
}
