package org.wetmil.workbook.read.stated;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Origin;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.StatedRow.StatedCell;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.Remark;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.read.earlier.EarlierBasis;
import org.wetmil.workbook.read.grid.Grid;

/** The rows that the estimator's own sheets state for the tables of figures. */
public final class EstimatorTables {
  private final Map<Tables, List<StatedRow>> rows = new EnumMap<>(Tables.class);
  private final Map<Tables, List<StatedRow>> onBasis = new EnumMap<>(Tables.class);
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

  /**
   * Adds a value typed on the Basis sheet of an earlier fill, which wins over all others.
   *
   * @param known the tables without it
   */
  public Remark addOnBasis(EarlierBasis.Yours yours, Catalogue known) {
    String figure = yours.row() + ", " + yours.figure().toLowerCase(Locale.ROOT);
    String raw = yours.value().raw();
    if (yours.table().isList() || known.table(yours.table()).find(yours.row()).isEmpty()) {
      return remark(
          yours,
          "%s typed on Basis for %s is not used; state it on a sheet %s."
              .formatted(raw, figure, yours.table().title()));
    }
    add(onBasis, yours, known);
    String over = raw.equals(yours.asFilled()) ? "" : ", typed over " + yours.asFilled();
    return remark(yours, "%s is %s as typed on Basis%s.".formatted(figure, raw, over));
  }

  private static void add(
      Map<Tables, List<StatedRow>> onBasis, EarlierBasis.Yours value, Catalogue known) {
    String first = known.table(value.table()).spec().fields().get(0).heading();
    List<StatedRow> rows = onBasis.computeIfAbsent(value.table(), any -> new ArrayList<>());
    Map<String, StatedCell> cells = new LinkedHashMap<>();
    rows.stream()
        .filter(row -> row.cells().get(first).raw().equals(value.row()))
        .forEach(row -> cells.putAll(row.cells()));
    rows.removeIf(row -> row.cells().get(first).raw().equals(value.row()));
    cells.put(first, new StatedCell("", value.row(), Double.NaN, null, false, false));
    cells.put(value.figure(), value.value());
    rows.add(new StatedRow(value.sheet(), value.sheetRow(), cells, true));
  }

  /**
   * The tables as an earlier fill had them, whatever is built in today.
   *
   * @param values those of its Basis
   * @param over the tables as they are read now
   */
  public static Catalogue asFilled(List<EarlierBasis.Yours> values, Catalogue over) {
    if (values.isEmpty()) {
      return over;
    }
    Map<Tables, List<StatedRow>> rows = new EnumMap<>(Tables.class);
    values.stream()
        .filter(value -> !value.table().isList())
        .filter(value -> over.table(value.table()).find(value.row()).isPresent())
        .forEach(value -> add(rows, value, over));
    return over.with(rows, UnitSystem.US, new ArrayList<>());
  }

  private static Remark remark(EarlierBasis.Yours yours, String message) {
    return new Remark("basis-typed-over", yours.sheet(), "", yours.value().raw(), message);
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

  /** The text of a setting of this job; empty when none is stated. */
  public Optional<String> setting(Setting setting) {
    return stated(setting, Stream.of(rows, onBasis));
  }

  private static Optional<String> stated(
      Setting setting, Stream<Map<Tables, List<StatedRow>>> tables) {
    return tables
        .flatMap(each -> each.getOrDefault(Tables.SETTINGS, List.of()).stream())
        .filter(row -> row.cells().containsKey("Value"))
        .filter(
            row -> Names.key(row.cells().get("Setting").raw()).equals(Names.key(setting.title())))
        .map(row -> row.cells().get("Value").raw().strip())
        .filter(text -> !text.isEmpty())
        .reduce((first, last) -> last);
  }

  /** The units that the settings state for the job, or those laid under them for all jobs. */
  public Optional<UnitSystem> units() {
    return stated(Setting.UNITS, Stream.of(under, rows, onBasis)).flatMap(UnitSystem::find);
  }

  /** The built-in tables with these rows laid over them. */
  public Catalogue over(UnitSystem fallback, List<TableProblem> problems) {
    problems.addAll(nameless);
    Catalogue below =
        under.isEmpty() ? Catalogue.builtIn() : Catalogue.builtIn().with(under, fallback, problems);
    return below.with(rows, fallback, problems).with(onBasis, fallback, problems);
  }
}
