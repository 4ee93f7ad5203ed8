package org.wetmil.jobs.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Quoted;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.estimate.Work;
import org.wetmil.workbook.fill.beside.FilledCells;
import org.wetmil.workbook.stream.CellAddress;

/** Words what was read from the cells of a line, and what stood in for those that are blank. */
final class ReadCells {
  private final Catalogue catalogue;
  private final FilledCells.Place place;
  private final FilledLine filled;

  ReadCells(Catalogue catalogue, FilledCells.Place place) {
    this.catalogue = catalogue;
    this.place = place;
    this.filled = place.line();
  }

  /** Column, cell, text and meaning of each of these that holds something. */
  List<List<String>> read(Set<InputColumn> wanted) {
    List<List<String>> rows = new ArrayList<>();
    for (InputColumn column : wanted) {
      InputValue value = filled.line().get(column);
      if (!value.isBlank()) {
        String cells =
            place.cells(column).stream()
                .map(CellAddress::toString)
                .collect(Collectors.joining(" and "));
        rows.add(List.of(column.heading(), cells, Quoted.of(value.raw()), meaning(column)));
      }
    }
    return rows;
  }

  String meaning(InputColumn column) {
    InputValue value = filled.line().get(column);
    if (value.state() == InputValue.State.BEYOND) {
      return "past the greatest size that a line is taken with: counts as not stated";
    }
    if (value.isFault()) {
      return "cannot be read: counts as not stated";
    }
    if (!column.quantity().isNumber()) {
      return named(column).orElse("");
    }
    String number = Numbers.of(value.number(), column.quantity(), filled.system());
    if (!column.takes(value.number())) {
      return number + ": counts as not stated";
    }
    return value.low() < value.high() ? number + ", the middle of the range" : number;
  }

  private Optional<String> named(InputColumn column) {
    Work work = filled.work();
    return switch (column) {
      case SURFACE -> known(work.surface() == null ? null : work.surface().name());
      case CONDITION -> known(work.condition() == null ? null : work.condition().name());
      case TEXTURE -> known(work.texture() == null ? null : work.texture().name());
      case SPRAYER -> known(work.sprayer() == null ? null : work.sprayer().name());
      case SHAPE -> known(work.shape() == null ? null : work.shape().name());
      case TIP -> known(work.planned() == null ? null : "tip " + work.planned().code());
      case COATING ->
          known(
              work.coating() == null
                  ? null
                  : work.coating().name()
                      + (work.coating().className().equals(work.coating().name())
                          ? ""
                          : ", of the class " + work.coating().className()));
      default -> Optional.empty();
    };
  }

  private static Optional<String> known(String name) {
    return Optional.of(name == null ? "not known" : name);
  }

  /** Column and what stood in for it, for each of these that states nothing. */
  List<List<String>> assumed(Set<InputColumn> wanted) {
    List<List<String>> rows = new ArrayList<>();
    for (InputColumn column : wanted) {
      assumed(column).ifPresent(said -> rows.add(List.of(column.heading(), said)));
    }
    return rows;
  }

  private Optional<String> assumed(InputColumn column) {
    boolean words = !column.quantity().isNumber();
    boolean stated = words ? !filled.line().text(column).isEmpty() : filled.line().has(column);
    if (stated || filled.work().surface() == null || filled.work().coating() == null) {
      return Optional.empty();
    }
    Work work = filled.work();
    return Optional.ofNullable(
        switch (column) {
          case COUNT -> filled.line().has(InputColumn.AREA) ? null : "1: a blank count is one";
          case OPENINGS ->
              filled.area() != null && filled.area().listed().isEmpty() ? "none taken off" : null;
          case GIRTH -> usual("Girth", work);
          case HEIGHT -> "no factor for height";
          case CONDITION -> "no preparation";
          case TEXTURE -> "smooth";
          case THINNER -> "none";
          case SPRAYER -> "no limit of flow, orifice or pressure, and no hose";
          case INCLUDE -> "yes";
          case BACK_ROLL -> backRoll();
          case PRESSURE ->
              entry(
                  work.coating().row().get("Usual pressure"), "usual for " + work.coating().name());
          case COATS ->
              filled.line().has(InputColumn.SPECIFIED_FILM)
                  ? "from the specified dry film"
                  : entry(
                      work.coating().row().get("Usual coats"),
                      "usual for " + work.coating().name());
          default -> null;
        });
  }

  private String usual(String heading, Work work) {
    Entry entry = work.surface().row().get(heading);
    return entry.isStated() ? entry(entry, "usual for " + work.surface().name()) : null;
  }

  private String backRoll() {
    Entry setting = catalogue.entry(Setting.BACK_ROLL);
    return setting.isStated()
        ? setting.text() + ": setting Back-roll; " + setting.origin().text()
        : "bare or rough surfaces that are rolled at all are rolled after the first coat";
  }

  private String entry(Entry entry, String what) {
    return Numbers.of(entry.number(), entry.quantity(), filled.system())
        + ": "
        + what
        + " ("
        + Sources.said(entry.kind(), entry.source(), entry.origin().text())
        + ")";
  }
}
