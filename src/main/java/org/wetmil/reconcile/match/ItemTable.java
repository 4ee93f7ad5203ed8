package org.wetmil.reconcile.match;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetmil.ledger.ItemName;

/** A table of items and coatings, by what spellings of one item have in common. */
public final class ItemTable {
  private final Map<String, ItemName> byKey = new HashMap<>();
  private final List<Contradiction> contradictions = new ArrayList<>();

  /** Two rows that give one item two coatings; the first counts. */
  public record Contradiction(ItemName first, ItemName later) {}

  public ItemTable(List<ItemName> rows) {
    for (ItemName row : rows) {
      ItemName first = byKey.putIfAbsent(Phrases.key(row.item()), row);
      if (first != null && !Phrases.key(first.coating()).equals(Phrases.key(row.coating()))) {
        contradictions.add(new Contradiction(first, row));
      }
    }
  }

  public List<Contradiction> contradictions() {
    return List.copyOf(contradictions);
  }

  /** The coating of an item; empty when the table does not name it. */
  Optional<String> coating(String key) {
    return Optional.ofNullable(byKey.get(key)).map(ItemName::coating);
  }
}
