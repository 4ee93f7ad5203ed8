package org.wetmil.hostile;

import java.util.List;
import java.util.Random;

/** Values that a program of its right mind would not write, and a few that it would. */
final class Nasty {
  private static final List<String> NUMBERS =
      List.of(
          "1e308",
          "-1e308",
          "1e309",
          "NaN",
          "INF",
          "-INF",
          "Infinity",
          "1e-320",
          "-0",
          "0",
          "-1",
          "2958465",
          "2958466",
          "-693594",
          "1e10",
          "60",
          "59.99999",
          "0.1e1e1",
          "1,5",
          "1_000",
          "9007199254740993",
          "99999999999999999999999999",
          "0x1F",
          "+7",
          " 12 ",
          "12d",
          "1f",
          "");

  private static final List<String> WORDS =
      List.of(
          "=1+1",
          "=cmd|'/C calc'!A0",
          "+1",
          "-1",
          "@SUM(1)",
          "'=1",
          "\t=1",
          "TRUE",
          "#REF!",
          "#N/A",
          "_x0000_",
          "_x005F_x0041_",
          "\uFFFF",
          "\u202Eexe",
          "é😀",
          "a\u0301",
          "   ",
          "\u00a0",
          "<b>",
          "]]>",
          "{0}",
          "%s%n%d",
          "$1\\1",
          "../../../etc/hostname",
          "C:\\con",
          "walls",
          "latex",
          "12' 6\"",
          "5'",
          "1e5 ft",
          "-3 m",
          "NaN ft",
          "517",
          "999",
          "100",
          "0 in",
          "1/0",
          "½");

  private static final List<String> PLACES =
      List.of(
          "A1",
          "XFD1048576",
          "XFE1",
          "A1048577",
          "A0",
          "0",
          "ZZZZ99999999",
          "AAAAAAAAAAAAA1",
          "R1C1",
          "$A$1",
          "A1:XFD1048576",
          "B9:A1",
          "A1:",
          ":",
          "A:A",
          "1:1",
          "Sheet9!A1",
          "#REF!",
          "a1",
          "A-1",
          "A1 B2 C3",
          "A99999999999999999999");

  private static final List<String> COUNTS =
      List.of(
          "-1",
          "0",
          "1",
          "7",
          "65536",
          "1048576",
          "1048577",
          "16384",
          "1000000",
          "2147483647",
          "2147483648",
          "-2147483648",
          "99999999999",
          "1.5",
          "x",
          "");

  private Nasty() {}

  static String number(Random random) {
    return NUMBERS.get(random.nextInt(NUMBERS.size()));
  }

  static String place(Random random) {
    return PLACES.get(random.nextInt(PLACES.size()));
  }

  static String count(Random random) {
    return COUNTS.get(random.nextInt(COUNTS.size()));
  }

  /** A word; now and then one as long as a cell takes, or longer. */
  static String word(Random random) {
    int at = random.nextInt(WORDS.size() + 3);
    return switch (at - WORDS.size()) {
      case 0 -> "w".repeat(32_767);
      case 1 -> "w ".repeat(20_000);
      case 2 -> "9".repeat(32_767);
      default -> WORDS.get(at);
    };
  }

  /** Any of them. */
  static String any(Random random) {
    return switch (random.nextInt(4)) {
      case 0 -> number(random);
      case 1 -> word(random);
      case 2 -> place(random);
      default -> count(random);
    };
  }

  /** As the text of an element or attribute. */
  static String xml(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
  }
}
