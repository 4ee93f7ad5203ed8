package org.wetmil.hostile;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.wetmil.hostile.Parts.Part;

/** What is done to the parts of a workbook as wholes: to the package that they make. */
enum PartDamage {
  DROPPED {
    @Override
    void to(Parts parts, Random random) {
      parts.remove(parts.any(random));
    }
  },
  EMPTY {
    @Override
    void to(Parts parts, Random random) {
      Part part = parts.any(random);
      parts.replace(part, part.name(), new byte[0]);
    }
  },
  TWICE {
    @Override
    void to(Parts parts, Random random) {
      Part part = parts.any(random);
      parts.add(part.name(), part.bytes());
    }
  },
  ANOTHERS_BYTES {
    @Override
    void to(Parts parts, Random random) {
      Part part = parts.any(random);
      parts.replace(part, part.name(), parts.any(random).bytes());
    }
  },
  NOISE {
    @Override
    void to(Parts parts, Random random) {
      Part part = parts.any(random);
      byte[] noise = new byte[random.nextInt(5_000)];
      random.nextBytes(noise);
      parts.replace(part, part.name(), noise);
    }
  },
  RENAMED {
    @Override
    void to(Parts parts, Random random) {
      Part part = parts.any(random);
      parts.replace(part, outside(part.name(), random), part.bytes());
    }
  },
  ADDED {
    @Override
    void to(Parts parts, Random random) {
      parts.add(outside("xl/other.bin", random), new byte[] {1, 2, 3});
    }
  },
  MANY_MORE {
    @Override
    void to(Parts parts, Random random) {
      // mostly fewer, which take less time to make
      int count = random.nextInt(10) == 0 ? 10_000 : 300;
      int from = parts.all().size();
      for (int i = from; i < from + count; i++) {
        parts.add("xl/media/image" + i + ".png", new byte[0]);
      }
    }
  },
  INFLATED {
    @Override
    void to(Parts parts, Random random) {
      Part part = parts.any(random);
      byte[] large = Arrays.copyOf(part.bytes(), 20 << 20);
      Arrays.fill(large, part.bytes().length, large.length, (byte) ' ');
      parts.replace(part, part.name(), large);
    }
  },
  RELATIONSHIP {
    @Override
    void to(Parts parts, Random random) {
      Part part = parts.any(random, ".*\\.rels");
      List<String> targets =
          List.of(
              "../../../../etc/hostname",
              "file:///etc/hostname",
              "http://localhost:9/x",
              "worksheets/sheet1.xml",
              "/xl/workbook.xml",
              "",
              "%2e%2e/x",
              "a b|c?.xml",
              "#A1",
              "//host/share");
      parts.replace(
          part,
          XmlDamage.replaced(
              part.text(),
              "(?<=Target=\")[^\"]*(?=\")",
              random,
              targets.get(random.nextInt(targets.size()))));
    }
  },
  CONTENT_TYPE {
    @Override
    void to(Parts parts, Random random) {
      Part part = parts.any(random, ".*Content_Types.*");
      parts.replace(
          part,
          XmlDamage.replaced(
              part.text(),
              "(?<=ContentType=\")[^\"]*(?=\")",
              random,
              random.nextBoolean() ? "application/vnd.ms-excel.sheet.macroEnabled.main+xml" : "x"));
    }
  };

  abstract void to(Parts parts, Random random);

  /** Names that lead out of a folder, or that a disk does not take. */
  private static String outside(String own, Random random) {
    List<String> names =
        List.of(
            "../../" + own,
            "/" + own,
            own.replace('/', '\\'),
            "..\\..\\" + own,
            own.toUpperCase(Locale.ROOT),
            "C:/" + own,
            own + "/",
            own + "\u0000.xml",
            "n".repeat(5_000),
            "./" + own,
            "xl//" + own,
            new String(own.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_16));
    return names.get(random.nextInt(names.size()));
  }
}
