package org.wetmil.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.Bids;
import org.wetmil.ledger.ItemName;
import org.wetmil.ledger.Ledger;
import org.wetmil.ledger.Ledgers;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.reconcile.ReconcileSettings;
import org.wetmil.reconcile.Reconciler;
import org.wetmil.reconcile.SettingsTaken;

/** Every check of what is stated for a reconciliation fires and is silent just inside its limit. */
class BookChecksTest {

  private static List<String> found(ReconciledBooks.OwnWords own, String bidCurrency) {
    List<Ledger.Book> books = List.of(Ledgers.book("Item,Qty,Amount", "tape,1,$5.00"));
    return Checks.run(
            new ReconciledBooks(
                Reconciler.reconcile(List.of(), books, List.of(), ReconcileSettings.DEFAULT),
                books,
                List.of(
                    new ReconciledBooks.BidRead(
                        "loft.xlsx", "Loft", UnitSystem.US, bidCurrency, false, List.of())),
                UnitSystem.US,
                own))
        .stream()
        .filter(finding -> BookChecks.ALL.stream().anyMatch(c -> c.id().equals(finding.check())))
        .map(finding -> finding.check() + ": " + finding.message())
        .toList();
  }

  private static List<String> found(ReconciledBooks.OwnWords own) {
    return found(own, "");
  }

  private static SettingsTaken.Stated stated(String file, String value) {
    Catalogue tables =
        Bids.with(
            Tables.SETTINGS,
            List.of(Bids.row(1, "Setting", Setting.DUPLICATE_LINES.title(), "Value", value)));
    return SettingsTaken.Stated.in(file, tables);
  }

  private static ReconciledBooks.OwnWords settings(SettingsTaken.Stated... files) {
    return new ReconciledBooks.OwnWords(SettingsTaken.of(List.of(files)), List.of(), List.of());
  }

  private static ReconciledBooks.OwnWords table(ItemName... rows) {
    return new ReconciledBooks.OwnWords(SettingsTaken.BUILT_IN, List.of(List.of(rows)), List.of());
  }

  @Test
  void aCellThatCannotBeUsedIsNamed() {
    TableProblem problem =
        new TableProblem("Settings", "Settings", "B2", "maybe", "one of count, drop");

    assertThat(
            found(
                new ReconciledBooks.OwnWords(
                    SettingsTaken.BUILT_IN,
                    List.of(),
                    List.of(new ReconciledBooks.RefusedCell("books.xlsx", problem)))))
        .containsExactly(
            "setting-cell: \"maybe\" in Settings!B2 cannot be used; expected one of count, drop.");
    assertThat(found(ReconciledBooks.OwnWords.NONE)).isEmpty();
  }

  @Test
  void filesThatStateASettingDifferentlyAreNamedAndTheFirstCounts() {
    assertThat(found(settings(stated("books.xlsx", "drop"), stated("loft.xlsx", "count"))))
        .containsExactly(
            "setting-differs: Duplicate lines is \"drop\" here, which counts, and \"count\" in"
                + " loft.xlsx.");
    assertThat(found(settings(stated("books.xlsx", "drop"), stated("loft.xlsx", "drop"))))
        .isEmpty();
  }

  @Test
  void anItemWithTwoCoatingsIsNamedAndTheFirstCounts() {
    ItemName first = new ItemName("WH-100", "latex", "items.csv:2");

    assertThat(found(table(first, new ItemName("wh 100", "", "items.csv:9"))))
        .containsExactly(
            "item-twice: \"WH-100\" is \"latex\" in items.csv:2, which counts, and no coating in"
                + " items.csv:9.");
    assertThat(found(table(first, new ItemName("wh 100", "Latex", "items.csv:9")))).isEmpty();
  }

  @Test
  void aBidPricedInOtherMoneyIsNamed() {
    assertThat(found(ReconciledBooks.OwnWords.NONE, "EUR"))
        .containsExactly(
            "bid-currency: The prices of Loft are in EUR, the ledgers in $; none of them is"
                + " compared.");
    assertThat(found(ReconciledBooks.OwnWords.NONE, "USD")).isEmpty();
  }

  @Test
  void aSettingIsTakenFromTheFirstFileThatStatesIt() {
    SettingsTaken taken =
        SettingsTaken.of(
            List.of(new SettingsTaken.Stated("none.xlsx", Map.of()), stated("loft.xlsx", "drop")));

    assertThat(taken.over(null, null).dropDuplicates()).isTrue();
    assertThat(taken.over(null, null).toleranceShare()).isEqualTo(0.10);
    assertThat(taken.all())
        .filteredOn(each -> each.setting() == Setting.DUPLICATE_LINES)
        .extracting(SettingsTaken.Taken::file)
        .containsExactly("loft.xlsx");
    assertThat(ReconcileSettings.DEFAULT.dropDuplicates()).isFalse();
    assertThat(ReconcileSettings.DEFAULT.toleranceContainers()).isEqualTo(1);
  }
}
