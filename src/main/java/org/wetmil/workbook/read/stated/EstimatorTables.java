package org.wetmil.workbook.read.stated;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Origin;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.catalogue.Tables;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.read.grid.Grid;

/** The rows that the estimator's own sheets state for the tables of figures. */
public final class EstimatorTables {
  private final Map<Tables, List<StatedRow>> rows = new EnumMap<>(Tables.class);
  private final Map<Tables, List<StatedRow>> under;
  private final List<TableProblem> nameless = new ArrayList<>();

  /**
   * @param under rows of another workbook, over which these are laid
   */
  public EstimatorTables(Map<Tables, List<StatedRow>> under) {
    this.under = under;
  }

  public void add(Tables table, Grid grid) {
    rows.computeIfAbsent(table, any -> new ArrayList<>())
        .addAll(StatedSheet.rows(grid, table, nameless));
  }

  /** The rows, as of another workbook of this name. */
  public Map<Tables, List<StatedRow>> elsewhere(String file) {
    Map<Tables, List<StatedRow>> named = new EnumMap<>(Tables.class);
    rows.forEach(
        (table, stated) ->
            named.put(
                table,
                stated.stream()
                    .map(
                        row ->
                            new StatedRow(
                                Origin.Cell.elsewhere(file, row.sheet()), row.row(), row.cells()))
                    .toList()));
    return named;
  }

  /** The text of a setting; empty when none is stated. */
  public Optional<String> setting(Setting setting) {
    return rows.getOrDefault(Tables.SETTINGS, List.of()).stream()
        .filter(row -> row.cells().containsKey("Value"))
        .filter(
            row -> Names.key(row.cells().get("Setting").raw()).equals(Names.key(setting.title())))
        .map(row -> row.cells().get("Value").raw().strip())
        .filter(text -> !text.isEmpty())
        .reduce((first, last) -> last);
  }

  /** The units that the settings state for the job. */
  public Optional<UnitSystem> units() {
    return setting(Setting.UNITS).flatMap(UnitSystem::find);
  }

  /** The built-in tables with these rows laid over them. */
  public Catalogue over(UnitSystem fallback, List<TableProblem> problems) {
    problems.addAll(nameless);
    Catalogue below =
        under.isEmpty() ? Catalogue.builtIn() : Catalogue.builtIn().with(under, fallback, problems);
    return below.with(rows, fallback, problems);
  }
}
