package org.wetmil.catalogue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.wetmil.trade.TipCode;

/** Tips, guards and bucket tests as typed views; a code that cannot be read is a problem. */
record OnHand(
    List<TipOnHand> tips, List<Guard> guards, List<BucketTest> tests, List<TipCode> stock) {

  static OnHand of(Catalogue catalogue, List<TableProblem> problems) {
    List<TipOnHand> tips = new ArrayList<>();
    for (Row row : catalogue.rows(Tables.TIPS_ON_HAND)) {
      TipCode tip = tip(row, problems);
      if (tip != null) {
        tips.add(
            new TipOnHand(
                row, tip, row.number("Count"), row.number("Paint sprayed"), row.text("Fit")));
      }
    }
    List<BucketTest> tests = new ArrayList<>();
    for (Row row : catalogue.rows(Tables.BUCKET_TESTS)) {
      TipCode tip = tip(row, problems);
      if (tip != null && isWhole(row, catalogue, problems)) {
        double psi = row.number("Pressure");
        tests.add(new BucketTest(row, tip, row.text("Coating"), psi, row.number("Flow")));
      }
    }
    List<Guard> guards = catalogue.rows(Tables.GUARDS_ON_HAND).stream().map(OnHand::guard).toList();
    return new OnHand(tips, guards, tests, stock(catalogue));
  }

  /** A test that lacks its pressure, its flow or a coating that is known cannot be used. */
  private static boolean isWhole(Row row, Catalogue catalogue, List<TableProblem> problems) {
    boolean whole = true;
    for (String heading : List.of("Coating", "Pressure", "Flow")) {
      boolean known = !heading.equals("Coating") || catalogue.isCoating(row.text(heading));
      if (!row.get(heading).isStated() || !known) {
        problem(
            row, problems, "a test with a " + heading.toLowerCase(Locale.ROOT) + " that is known");
        whole = false;
      }
    }
    return whole;
  }

  private static Guard guard(Row row) {
    return new Guard(
        row,
        row.text("Guard"),
        Arrays.stream(row.text("Fits taken").split("[;,]"))
            .map(Names::key)
            .collect(Collectors.toSet()),
        row.text("Sprayer"));
  }

  private static List<TipCode> stock(Catalogue catalogue) {
    return catalogue.rows(Tables.STOCK_TIPS).stream().flatMap(OnHand::stock).toList();
  }

  private static Stream<TipCode> stock(Row row) {
    int digit = (int) row.number("Fan digit");
    int from = (int) Math.round(row.number("Orifice from"));
    int to = (int) Math.round(row.number("Orifice to"));
    List<Integer> even =
        Arrays.stream(row.text("Even orifices").split(";"))
            .filter(text -> !text.isBlank())
            .map(text -> Integer.valueOf(text.strip()))
            .toList();
    return IntStream.rangeClosed(from, to)
        .filter(thou -> thou % 2 == 1 || even.contains(thou))
        .mapToObj(thou -> new TipCode(digit, thou));
  }

  private static TipCode tip(Row row, List<TableProblem> problems) {
    TipCode.Result result = TipCode.read(row.text("Tip"));
    if (result instanceof TipCode.Read read) {
      return read.tip();
    }
    problem(row, problems, "a tip code: " + ((TipCode.Refused) result).sentence());
    return null;
  }

  private static void problem(Row row, List<TableProblem> problems, String expected) {
    if (row.get("Tip").origin() instanceof Origin.Cell cell) {
      problems.add(
          new TableProblem(
              row.spec().name(), cell.sheet(), cell.address(), row.text("Tip"), expected));
    }
  }
}
