package org.wetmil.jobs.explain;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.explain.Step;

/** The input columns that steps rest on. */
final class Wanted {
  private Wanted() {}

  static Set<InputColumn> by(List<Step> steps, FilledLine filled) {
    Set<InputColumn> wanted = EnumSet.of(InputColumn.SURFACE, InputColumn.COATING);
    for (Step step : steps) {
      step.ingredients().stream()
          .filter(each -> each.place() instanceof InputColumn)
          .forEach(each -> wanted.add((InputColumn) each.place()));
      step.column().ifPresent(column -> wanted.addAll(of(column)));
    }
    if (wanted.contains(InputColumn.AREA) && filled.line().has(InputColumn.AREA)) {
      wanted.remove(InputColumn.COUNT);
    }
    return wanted;
  }

  /** Columns that decide without standing in the formula. */
  private static Set<InputColumn> of(FilledColumn column) {
    return switch (column) {
      case NET_AREA -> EnumSet.of(InputColumn.OPENINGS, InputColumn.COUNT, InputColumn.SHAPE);
      case COATS -> EnumSet.of(InputColumn.COATS, InputColumn.SPECIFIED_FILM);
      case PRESSURE -> EnumSet.of(InputColumn.PRESSURE, InputColumn.SPRAYER);
      case TIP_CODE -> EnumSet.of(InputColumn.TIP, InputColumn.SPRAYER);
      case FLOW -> EnumSet.of(InputColumn.THINNER, InputColumn.SPRAYER);
      case SPREAD -> EnumSet.of(InputColumn.TEXTURE, InputColumn.THINNER);
      case SPRAY -> EnumSet.of(InputColumn.HEIGHT, InputColumn.TEXTURE);
      case ROLL -> EnumSet.of(InputColumn.BACK_ROLL, InputColumn.CONDITION, InputColumn.TEXTURE);
      case MASK -> EnumSet.of(InputColumn.MASK_EDGE, InputColumn.MASK_OPENINGS);
      case PREPARE -> EnumSet.of(InputColumn.CONDITION);
      case COUNTED -> EnumSet.of(InputColumn.INCLUDE);
      default -> EnumSet.noneOf(InputColumn.class);
    };
  }
}
