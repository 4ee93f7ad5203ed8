package org.wetmil.estimate.job;

import org.wetmil.catalogue.Surface;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.trade.Film;

/** Lines drawn together: one large line, or the small ones of a group that keep the same share. */
final class DrawnLines {
  private final String id;
  private final Object group;
  private final double transfer;
  private double paintGal;
  private double sprayHours;
  private double weight;
  private double squares;

  /**
   * @param id what tells them from the others; their draws follow from it
   * @param group what they are bought together as
   * @param transfer share of the paint sprayed that stays on each of them
   */
  DrawnLines(String id, Object group, double transfer) {
    this.id = id;
    this.group = group;
    this.transfer = transfer;
  }

  void add(FilledLine line, double lineWeight) {
    paintGal += line.base(FilledColumn.PAINT);
    sprayHours += line.base(FilledColumn.SPRAY);
    weight += lineWeight;
    squares += lineWeight * lineWeight;
  }

  String id() {
    return id;
  }

  Object group() {
    return group;
  }

  /** A drawn factor divides it and is never below it, as no more paint stays than is sprayed. */
  double transfer() {
    return transfer;
  }

  double paintGal() {
    return paintGal;
  }

  double sprayHours() {
    return sprayHours;
  }

  /** Of how many lines of one size the average would vary as that of these lines does. */
  double alike() {
    return squares > 0 ? weight * weight / squares : 1;
  }

  /** The share of the paint sprayed that stays on the work, as stated for the line. */
  static double transfer(FilledLine line) {
    Surface surface = line.work().surface();
    double hit =
        line.stroke().narrow()
            ? Film.narrowHit(surface.hit(), line.stroke().widthIn(), line.followed().fanIn())
            : surface.hit();
    return surface.stick() * hit;
  }
}
