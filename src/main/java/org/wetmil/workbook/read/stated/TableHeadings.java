package org.wetmil.workbook.read.stated;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Field;
import org.wetmil.catalogue.TableSpec;
import org.wetmil.catalogue.Tables;
import org.wetmil.quantity.Unit;
import org.wetmil.workbook.read.heading.HeadingText;
import org.wetmil.workbook.read.words.Words;

/** Which declared headings of a table a heading on the estimator's sheet may name. */
final class TableHeadings {
  private static final List<List<String>> OTHER = Words.list("table-headings.csv", 3);

  private final Tables table;
  private final TableSpec spec;

  TableHeadings(Tables table) {
    this.table = table;
    this.spec = Catalogue.builtIn().table(table).spec();
  }

  TableSpec spec() {
    return spec;
  }

  /** The fields that a heading may name, likeliest first; none when it is not known. */
  List<Field> fields(HeadingText heading) {
    return heading.names().stream()
        .map(this::named)
        .filter(found -> !found.isEmpty())
        .findFirst()
        .orElse(List.of());
  }

  /** Of several fields, the one that is measured in a unit; else the first. */
  static Field best(List<Field> fields, Optional<Unit> unit) {
    return fields.stream()
        .filter(field -> field.quantity() != null)
        .filter(
            field ->
                unit.filter(each -> each.dimension() == field.quantity().base().dimension())
                    .isPresent())
        .findFirst()
        .orElse(fields.get(0));
  }

  private List<Field> named(String name) {
    String key = Words.key(name);
    List<Field> declared =
        spec.fields().stream().filter(field -> Words.key(field.heading()).equals(key)).toList();
    return declared.isEmpty() ? other(key) : declared;
  }

  private List<Field> other(String key) {
    Stream<String> headings =
        OTHER.stream()
            .filter(row -> row.get(0).equals(table.title()) && Words.key(row.get(2)).equals(key))
            .map(row -> row.get(1));
    return headings.map(heading -> spec.fields().get(spec.index(heading))).toList();
  }
}
