package org.wetmil.audit;

import java.util.Optional;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.ratio.Concentration;
import org.wetmil.audit.stats.Interval;

/**
 * A reason why bids missed.
 *
 * @param by kind of the group; null for all bids
 * @param group the group; empty for all bids
 * @param partner a group that the bids do not tell apart from it; empty for none
 * @param ratio outcome over estimate there, as believed
 * @param likely 95 % interval of it
 * @param jobs bids that it comes from
 * @param weight what it added to the measure's whole estimate, as a share; below 0 it saved
 * @param where the part of it in which nearly all or most arose
 */
public record Cause(
    Measure measure,
    GroupedBy by,
    String group,
    String partner,
    double ratio,
    Interval likely,
    int jobs,
    double weight,
    Optional<Concentration> where) {}
