package org.wetmil.estimate;

import java.util.ArrayList;
import java.util.List;
import org.wetmil.catalogue.Answers;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Condition;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Task;
import org.wetmil.formula.Expr;
import org.wetmil.quantity.Quantity;

/** The person-hours of one line's own tasks besides spraying, as formulas. */
final class Hours {
  private final Catalogue catalogue;
  private final Work work;
  private final Terms terms;
  private final Expr heightFactor;

  Hours(Catalogue catalogue, Work work, Terms terms) {
    this.catalogue = catalogue;
    this.work = work;
    this.terms = terms;
    this.heightFactor = work.line().has(InputColumn.HEIGHT) ? heightFactor(terms) : null;
  }

  /** How coats are rolled behind the gun. */
  enum Rolling {
    NEVER,
    FIRST_COAT,
    ALL
  }

  /** The line's word, else the setting's, else the first coat on bare or rough walls. */
  static Rolling rolling(Catalogue catalogue, Work work) {
    for (String word :
        List.of(work.line().text(InputColumn.BACK_ROLL), catalogue.text(Setting.BACK_ROLL))) {
      Rolling said = word.isEmpty() ? null : rolling(word);
      if (said != null) {
        return said;
      }
    }
    Condition condition = work.condition();
    boolean bare = condition != null && condition.state() == Condition.State.BARE;
    return work.surface().rollsByDefault() && (bare || work.isRough())
        ? Rolling.FIRST_COAT
        : Rolling.NEVER;
  }

  /** What a word under Back-roll means; null when it is not known. */
  static Rolling rolling(String word) {
    return switch (Names.key(Answers.plain(word))) {
      case "never", "no", "none", "n" -> Rolling.NEVER;
      case "first coat", "first", "1", "yes", "y" -> Rolling.FIRST_COAT;
      case "all", "all coat", "every coat" -> Rolling.ALL;
      default -> null;
    };
  }

  Expr roll(Expr netArea, Expr coats) {
    Rolling rolling = rolling(catalogue, work);
    if (rolling == Rolling.NEVER) {
      return Expr.num(0);
    }
    Task task = work.isRough() ? Task.BACK_ROLL_ROUGH : Task.BACK_ROLL_SMOOTH;
    Expr rolled = rolling == Rolling.ALL ? netArea.times(coats) : netArea;
    return atHeight(rolled.over(terms.rate(task)));
  }

  /**
   * Covering and masking, with its taking down. The floor is covered from the floor, so only the
   * rest grows with the height.
   */
  Expr mask(Rooms.Room room) {
    List<Expr> high = new ArrayList<>();
    BidLine line = work.line();
    if (line.has(InputColumn.MASK_EDGE)) {
      high.add(terms.input(InputColumn.MASK_EDGE).over(terms.rate(Task.TAPE_EDGE)));
    }
    if (line.has(InputColumn.MASK_OPENINGS)) {
      high.add(terms.input(InputColumn.MASK_OPENINGS).times(terms.rate(Task.MASK_OPENING)));
    }
    if (work.surface().hardware() && isWorn() && line.has(InputColumn.COUNT)) {
      high.add(terms.input(InputColumn.COUNT).times(terms.rate(Task.MASK_HARDWARE)));
    }
    List<Expr> all = new ArrayList<>();
    BidLine floor = room.floorOf(line);
    if (floor != null) {
      all.add(floorArea(floor).over(terms.rate(Task.COVER_FLOOR)));
    }
    if (!high.isEmpty()) {
      all.add(atHeight(one(high)));
    }
    return all.isEmpty() ? Expr.num(0) : one(all).times(Expr.num(1).plus(terms.rate(Task.UNMASK)));
  }

  /** Preparation over the net area once, and caulking over the length of worn trim. */
  Expr prepare(Expr netArea) {
    Condition condition = work.condition();
    if (condition == null) {
      return Expr.num(0);
    }
    List<Expr> all = new ArrayList<>();
    for (Task task : condition.preparation()) {
      all.add(netArea.over(terms.rate(task)));
    }
    boolean caulked =
        condition.state() == Condition.State.BARE || condition.state() == Condition.State.PEELING;
    if (work.surface().trim() && caulked && work.line().has(InputColumn.LENGTH)) {
      Expr length = terms.input(InputColumn.LENGTH);
      Expr run =
          work.line().has(InputColumn.COUNT)
              ? terms.input(InputColumn.COUNT).times(length)
              : length;
      all.add(run.over(terms.rate(Task.CAULK)));
    }
    return all.isEmpty() ? Expr.num(0) : atHeight(one(all));
  }

  /** Hours times the factor for the height of the work; a line without a height has none. */
  Expr atHeight(Expr hours) {
    return heightFactor == null ? hours : hours.times(heightFactor);
  }

  private static Expr heightFactor(Terms terms) {
    Expr height = terms.input(InputColumn.HEIGHT);
    return Expr.ifAtMost(
        height,
        terms.setting(Setting.HEIGHT_STEP_1),
        terms.rate(Task.HEIGHT_1),
        Expr.ifAtMost(
            height,
            terms.setting(Setting.HEIGHT_STEP_2),
            terms.rate(Task.HEIGHT_2),
            Expr.ifAtMost(
                height,
                terms.setting(Setting.HEIGHT_STEP_3),
                terms.rate(Task.HEIGHT_3),
                terms.rate(Task.HEIGHT_OVER))));
  }

  /** Doors that are not new or primed carry hardware to be masked. */
  private boolean isWorn() {
    Condition condition = work.condition();
    return condition != null
        && condition.state() != Condition.State.NEW
        && condition.state() != Condition.State.PRIMED;
  }

  /** The floor as often as the line that sizes it occurs. */
  private Expr floorArea(BidLine floor) {
    boolean many = floor.has(InputColumn.COUNT);
    if (floor == work.line()) {
      double length = UnitFactor.si(Quantity.LENGTH, terms.system());
      double area = UnitFactor.si(Quantity.AREA, terms.system());
      Expr one =
          UnitFactor.scaled(
              terms.input(InputColumn.LENGTH).times(terms.input(InputColumn.WIDTH)),
              length * length / area);
      return many ? terms.input(InputColumn.COUNT).times(one) : one;
    }
    // another row's cells must not stand in a row formula, so that sorting keeps it right
    double ft2 = floor.number(InputColumn.LENGTH) * floor.number(InputColumn.WIDTH);
    double all = many ? floor.number(InputColumn.COUNT) * ft2 : ft2;
    return terms.given(Given.FLOOR, all);
  }

  private static Expr one(List<Expr> terms) {
    return terms.size() == 1 ? terms.get(0) : new Expr.Sum(terms);
  }
}
