package org.wetmil.hostile;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.wetmil.hostile.Parts.Part;

/**
 * One command on one broken file or on a folder of them, made from a seed: the same seed gives the
 * same bytes.
 *
 * @param what was done, to be found again by
 * @param args the command line
 * @param output what it may write: a file, or a folder of results
 * @param files how many results there are at most
 */
record Broken(String what, List<String> args, Path output, int files) {
  /** More than there are threads for, so that they also wait for each other. */
  private static final int OF_A_FOLDER = 12;

  Broken(String what, List<String> args, Path output) {
    this(what, args, output, 1);
  }

  /**
   * Makes the files in an empty folder.
   *
   * @param seed any number
   */
  static Broken of(long seed, Wholes wholes, Path folder) throws IOException {
    // neighbouring seeds would begin with nearly the same number
    Random random = new Random(seed * 0x9E3779B97F4A7C15L);
    random.nextLong();
    int share = random.nextInt(100);
    if (share < 74) {
      return fill(random, wholes, folder);
    }
    if (share < 76) {
      return fillFolder(random, wholes, folder);
    }
    if (share < 77) {
      return protectedFile(random, wholes, folder);
    }
    if (share < 87) {
      return start(random, wholes, folder);
    }
    if (share < 97) {
      return reconcile(random, wholes, folder);
    }
    return audit(random, wholes, folder);
  }

  private static Broken fill(Random random, Wholes wholes, Path folder) throws IOException {
    List<String> done = new ArrayList<>();
    Path file = folder.resolve("job.xlsx");
    Path output = folder.resolve("job-filled.xlsx");
    List<String> args = new ArrayList<>(List.of("fill", "--date", "2026-01-05"));
    int extra = random.nextInt(20);
    if (extra == 0) {
      // the owner's tables are broken, the bid is whole
      Path tables = folder.resolve("own.xlsx");
      Files.write(file, wholes.of("small").zip());
      Files.write(tables, damaged(wholes.of("tables"), random, done));
      args.addAll(List.of("--tables", tables.toString()));
    } else {
      Files.write(file, damaged(wholes.bid(random), random, done));
    }
    if (extra == 1) {
      args.add("--refresh");
    }
    args.addAll(List.of("--out", output.toString(), file.toString()));
    return new Broken("fill " + done, args, output);
  }

  private static Broken fillFolder(Random random, Wholes wholes, Path folder) throws IOException {
    List<String> done = new ArrayList<>();
    Path bids = Files.createDirectory(folder.resolve("bids"));
    Path output = folder.resolve("filled");
    for (int i = 0; i < OF_A_FOLDER; i++) {
      done.add("job-" + i + ":");
      Parts bid = wholes.bid(random);
      // some are whole, so that results are written while others are refused
      byte[] file = random.nextInt(3) == 0 ? bid.zip() : damaged(bid, random, done);
      Files.write(bids.resolve("job-" + i + ".xlsx"), file);
    }
    return new Broken(
        "fill folder " + done,
        List.of(
            "fill",
            "--date",
            "2026-01-05",
            "--fail-on",
            "stop",
            "--out",
            output.toString(),
            bids.toString()),
        output,
        OF_A_FOLDER);
  }

  private static Broken protectedFile(Random random, Wholes wholes, Path folder)
      throws IOException {
    Path file = folder.resolve("job.xlsx");
    Path words = Files.writeString(folder.resolve("words.txt"), Wholes.PASSWORD);
    ByteDamage damage = any(ByteDamage.values(), random);
    Files.write(file, damage.to(wholes.locked(), random));
    Path output = folder.resolve("job-filled.xlsx");
    return new Broken(
        "fill protected " + damage,
        List.of(
            "fill",
            "--password-file",
            words.toString(),
            "--out",
            output.toString(),
            file.toString()),
        output);
  }

  private static Broken start(Random random, Wholes wholes, Path folder) throws IOException {
    List<String> done = new ArrayList<>();
    Path file = folder.resolve("rooms.xlsx");
    Parts whole = random.nextInt(8) == 0 ? wholes.bid(random) : wholes.of("rooms");
    Files.write(file, damaged(whole, random, done));
    return new Broken(
        "start " + done, List.of("start", file.toString()), folder.resolve("rooms-bid.xlsx"));
  }

  private static Broken reconcile(Random random, Wholes wholes, Path folder) throws IOException {
    List<String> done = new ArrayList<>();
    Path bid = folder.resolve("bid.xlsx");
    Path ledger = folder.resolve("ledger.csv");
    Path output = folder.resolve("month.xlsx");
    List<String> args = new ArrayList<>(List.of("reconcile", "--date", "2026-05-04"));
    Files.write(bid, wholes.of("loft").zip());
    Files.writeString(ledger, Wholes.purchases());
    int share = random.nextInt(10);
    if (share < 6) {
      Files.write(ledger, ledger(Wholes.purchases(), random, done));
    } else if (share < 7) {
      Files.write(bid, damaged(wholes.bid(random), random, done));
    } else if (share < 8) {
      bid = old(random, wholes, folder, done);
    } else {
      Path items = folder.resolve("items.xlsx");
      Files.write(items, damaged(wholes.of("items"), random, done));
      args.addAll(List.of("--items", items.toString()));
    }
    args.addAll(List.of("--out", output.toString(), bid.toString()));
    args.addAll(List.of("--purchases", ledger.toString()));
    return new Broken("reconcile " + done, args, output);
  }

  private static Broken audit(Random random, Wholes wholes, Path folder) throws IOException {
    List<String> done = new ArrayList<>();
    Path bids = Files.createDirectory(folder.resolve("bids"));
    Path output = folder.resolve("audit.xlsx");
    List<String> args = new ArrayList<>(List.of("audit", "--date", "2026-05-04"));
    Files.write(bids.resolve("a.xlsx"), Wholes.past(random));
    int share = random.nextInt(10);
    if (share < 4) {
      Path actuals = folder.resolve("actuals.csv");
      Files.write(actuals, ledger(Wholes.actuals(), random, done));
      args.addAll(List.of("--actuals", actuals.toString()));
    } else if (share < 6) {
      old(random, wholes, bids, done);
    } else {
      Files.write(bids.resolve("b.xlsx"), damaged(wholes.bid(random), random, done));
    }
    args.addAll(List.of("--out", output.toString(), bids.toString()));
    return new Broken("audit " + done, args, output);
  }

  private static Path old(Random random, Wholes wholes, Path folder, List<String> done)
      throws IOException {
    ByteDamage damage = any(ByteDamage.values(), random);
    done.add("old format " + damage);
    return Files.write(folder.resolve("old.xls"), damage.to(wholes.old(), random));
  }

  private static byte[] ledger(String text, Random random, List<String> done) {
    String changed = text;
    for (int i = 0; i <= random.nextInt(3); i++) {
      LedgerDamage damage = any(LedgerDamage.values(), random);
      done.add(damage.name());
      changed = damage.to(changed, random);
    }
    byte[] bytes = changed.getBytes(StandardCharsets.UTF_8);
    if (random.nextInt(4) > 0 || bytes.length == 0) {
      return bytes;
    }
    ByteDamage damage = any(ByteDamage.values(), random);
    done.add(damage.name());
    return damage.to(bytes, random);
  }

  /** A workbook after one to three damages. */
  static byte[] damaged(Parts parts, Random random, List<String> done) {
    for (int i = 0; i <= random.nextInt(3); i++) {
      damage(parts, random, done);
    }
    byte[] zip = parts.zip();
    if (random.nextInt(8) > 0) {
      return zip;
    }
    ByteDamage damage = any(ByteDamage.values(), random);
    done.add(damage.name());
    return damage.to(zip, random);
  }

  private static void damage(Parts parts, Random random, List<String> done) {
    int kind = random.nextInt(10);
    if (kind < 2) {
      PartDamage damage = any(PartDamage.values(), random);
      done.add(damage.name());
      damage.to(parts, random);
      return;
    }
    Part part =
        parts.any(random, kind < 6 ? ".*worksheets/sheet\\d+\\.xml" : ".*\\.(xml|rels|vml)");
    if (part.bytes().length == 0 || part.bytes().length > 2_000_000) {
      return;
    }
    if (kind < 6) {
      CellDamage damage = any(CellDamage.values(), random);
      done.add(damage + " in " + part.name());
      parts.replace(part, damage.to(part.text(), random));
    } else {
      XmlDamage damage = any(XmlDamage.values(), random);
      done.add(damage + " in " + part.name());
      parts.replace(part, damage.to(part.text(), random));
    }
  }

  private static <T> T any(T[] values, Random random) {
    return values[random.nextInt(values.length)];
  }
}
