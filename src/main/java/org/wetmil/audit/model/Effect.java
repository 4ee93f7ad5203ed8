package org.wetmil.audit.model;

import org.wetmil.audit.past.GroupedBy;

/**
 * What a group adds to the factor common to all bids, with every other kind of group taken into
 * account.
 *
 * @param jobs bids that have a part in it
 * @param bids whole bids that their evidence amounts to
 * @param weight w, how far the group is believed against all bids, 0..1
 * @param seen log effect as its bids show it
 * @param log log effect as believed: w times the one seen
 * @param along log effect, on average over its own work, of the groups of the kind that it always
 *     goes with: of the surfaces of a coating, of the heights of a crew
 */
public record Effect(
    GroupedBy by,
    String group,
    int jobs,
    double bids,
    double weight,
    double seen,
    double log,
    double along) {}
