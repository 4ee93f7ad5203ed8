package org.wetmil.reconcile.bid;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/**
 * What a job was bid to use of one coating.
 *
 * @param coating its name in the bid
 * @param className its generic class
 * @param areaFt2 net area in ft², each surface once
 * @param coatedFt2 area times coats in ft²
 * @param dryMil dry film of one coat in mil, the mean over the coated area
 * @param theoreticalGal paint that the film holds without loss, US gallons
 * @param paintGal paint bid, US gallons
 * @param transferEfficiency planned TE, share
 * @param waste planned share of the paint bought that is never sprayed
 * @param roughness paint taken against a smooth surface; 1 is smooth
 * @param pricePerGal price bid per US gallon, in the cheapest container; null when the bid states
 *     none
 * @param containerGal smallest container sold, US gallons
 */
public record BidUse(
    String coating,
    String className,
    double areaFt2,
    double coatedFt2,
    double dryMil,
    double theoreticalGal,
    double paintGal,
    double transferEfficiency,
    double waste,
    double roughness,
    BigDecimal pricePerGal,
    double containerGal) {

  /** Coats, the mean over the area. */
  public double coats() {
    return coatedFt2 / areaFt2;
  }

  /** The same with no price stated. */
  BidUse withoutPrice() {
    return new BidUse(
        coating,
        className,
        areaFt2,
        coatedFt2,
        dryMil,
        theoreticalGal,
        paintGal,
        transferEfficiency,
        waste,
        roughness,
        null,
        containerGal);
  }

  /**
   * Several uses of one coating as one. The parts of the loss are means such that paint on the
   * surface, paint sprayed and paint bid each stay the sum of the parts: theoretical x roughness,
   * paint x (1 - waste), paint (derived).
   */
  public static BidUse together(List<BidUse> parts) {
    if (parts.size() == 1) {
      return parts.get(0);
    }
    double area = 0;
    double coated = 0;
    double film = 0;
    double theoretical = 0;
    double onSurface = 0;
    double sprayed = 0;
    double paint = 0;
    double container = Double.POSITIVE_INFINITY;
    BigDecimal cost = BigDecimal.ZERO;
    BigDecimal priced = BigDecimal.ZERO;
    for (BidUse part : parts) {
      area += part.areaFt2;
      coated += part.coatedFt2;
      film += part.dryMil * part.coatedFt2;
      theoretical += part.theoreticalGal;
      onSurface += part.theoreticalGal * part.roughness;
      sprayed += part.paintGal * (1 - part.waste);
      paint += part.paintGal;
      container = Math.min(container, part.containerGal);
      if (part.pricePerGal != null) {
        BigDecimal gallons = BigDecimal.valueOf(part.paintGal);
        cost = cost.add(part.pricePerGal.multiply(gallons));
        priced = priced.add(gallons);
      }
    }
    boolean onePrice =
        parts.stream().allMatch(part -> part.pricePerGal != null)
            && parts.stream()
                .allMatch(part -> part.pricePerGal.compareTo(parts.get(0).pricePerGal) == 0);
    BigDecimal price = priced.signum() == 0 ? null : cost.divide(priced, MathContext.DECIMAL64);
    return new BidUse(
        parts.get(0).coating,
        parts.get(0).className,
        area,
        coated,
        film / coated,
        theoretical,
        paint,
        onSurface / sprayed,
        1 - sprayed / paint,
        onSurface / theoretical,
        onePrice ? parts.get(0).pricePerGal : price,
        container);
  }
}
