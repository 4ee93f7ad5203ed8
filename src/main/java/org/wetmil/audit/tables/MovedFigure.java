package org.wetmil.audit.tables;

import org.wetmil.catalogue.Entry;

/**
 * A figure that is another today than in the tables of a past bid.
 *
 * @param table the table's name
 * @param row the row's name; of a loss, the coating on the surface
 * @param figure its heading
 * @param then the bid's figure
 * @param now today's
 * @param paintGal paint that today's figure alone adds to the bid, in US gallons
 * @param hours person-hours that it alone adds
 */
public record MovedFigure(
    String table, String row, String figure, Entry then, Entry now, double paintGal, double hours) {

  /** Whether it changes the bid at all. */
  boolean matters() {
    return paintGal != 0 || hours != 0;
  }
}
