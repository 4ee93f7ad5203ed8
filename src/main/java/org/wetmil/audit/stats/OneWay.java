package org.wetmil.audit.stats;

import java.util.List;

/**
 * One-way analysis of variance with groups of unequal size (derived: the moments of the textbook
 * random-effects model).
 *
 * @param groups how many groups have an observation
 * @param freedomWithin observations less groups
 * @param within s², variance within groups; NaN without degrees of freedom
 * @param between tau², variance of the groups' true means, never under 0; NaN when it cannot be
 *     told
 */
public record OneWay(int groups, double freedomWithin, double within, double between) {

  public static OneWay of(List<Sample> samples) {
    List<Sample> groups = samples.stream().filter(group -> group.weight() > 0).toList();
    double weight = groups.stream().mapToDouble(Sample::weight).sum();
    double freedom = groups.stream().mapToDouble(Sample::count).sum() - groups.size();
    if (groups.size() < 2 || freedom <= 0) {
      return new OneWay(groups.size(), Math.max(0, freedom), Double.NaN, Double.NaN);
    }
    double mean =
        groups.stream().mapToDouble(group -> group.weight() * group.mean()).sum() / weight;
    double within = groups.stream().mapToDouble(Sample::squares).sum() / freedom;
    double among =
        groups.stream().mapToDouble(g -> g.weight() * Math.pow(g.mean() - mean, 2)).sum()
            / (groups.size() - 1);
    double typicalSize =
        (weight - groups.stream().mapToDouble(g -> g.weight() * g.weight()).sum() / weight)
            / (groups.size() - 1);
    return new OneWay(groups.size(), freedom, within, Math.max(0, (among - within) / typicalSize));
  }
}
