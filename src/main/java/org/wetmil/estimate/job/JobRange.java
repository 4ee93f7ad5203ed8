package org.wetmil.estimate.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.likely.Band;
import org.wetmil.estimate.likely.Factor;
import org.wetmil.estimate.price.CostItem;
import org.wetmil.estimate.price.Price;
import org.wetmil.estimate.price.PriceTerms;

/**
 * The likely range of a job as a whole. Hours follow from the time of spraying by the same formulas
 * as the stated ones, whole days with their set-up included. Paint that a draw takes is paid at
 * what the order pays for it.
 *
 * @param paintGal paint of the job in gallons, that of the hoses included
 * @param hours person-hours of the job
 * @param days whole days on site
 * @param direct direct cost; empty without a price
 * @param beforeTax price before tax as computed; empty without a price, or where a price is asked,
 *     which does not move
 * @param total the same with its tax
 * @param drivers what each factor alone does, in the order of the factors
 */
public record JobRange(
    Band paintGal,
    Band hours,
    Band days,
    Optional<MoneyBand> direct,
    Optional<MoneyBand> beforeTax,
    Optional<MoneyBand> total,
    List<Driver> drivers) {

  public JobRange {
    drivers = List.copyOf(drivers);
  }

  static JobRange of(
      FilledBid filled, JobDraws draws, JobHours hours, Order order, JobPrice price) {
    Maker maker = new Maker(filled, hours, order);
    List<Driver> drivers = new ArrayList<>();
    for (Factor factor : Factor.values()) {
      JobDraws.Alone alone = draws.only(factor);
      drivers.add(
          new Driver(
              factor,
              maker.paint(alone.paintGal()),
              maker.hours(alone.sprayHours(), JobFigure.TOTAL)));
    }
    Optional<PricedDraws> priced =
        price.price().map(stated -> new PricedDraws(filled, draws, hours, order, stated));
    boolean asked =
        price.price().isPresent() && PriceTerms.of(filled.bid().catalogue()).asked() != null;
    return new JobRange(
        maker.paint(draws.paintGal()),
        maker.hours(draws.sprayHours(), JobFigure.TOTAL),
        maker.hours(draws.sprayHours(), JobFigure.DAYS),
        priced.map(draw -> draw.band(Price::direct)),
        priced.filter(draw -> !asked).map(draw -> draw.band(Price::beforeTax)),
        priced.filter(draw -> !asked).map(draw -> draw.band(Price::total)),
        drivers);
  }

  /** Ranges of paint and hours from draws. */
  private record Maker(FilledBid filled, JobHours stated, Order order) {
    Band paint(double[] linesGal) {
      double[] paint = linesGal.clone();
      double hose = order.hoseGal();
      Arrays.setAll(paint, i -> paint[i] + hose);
      return JobDraws.band(paint, filled.total(FilledColumn.PAINT) + hose);
    }

    /** More spraying never makes fewer hours or days, so the ends follow from those of it. */
    Band hours(double[] sprayHours, JobFigure figure) {
      Band spray = JobDraws.band(sprayHours, stated.number(JobFigure.SPRAY));
      return Band.around(
          stated.withSpray(filled.bid(), spray.low()).number(figure),
          stated.number(figure),
          stated.withSpray(filled.bid(), spray.high()).number(figure));
    }
  }

  /** Prices of the draws at both ends of the direct cost. */
  private static final class PricedDraws {
    private final FilledBid filled;
    private final JobHours hours;
    private final Order order;
    private final Price stated;
    private final double[] taken;
    private final Map<Order.Item, double[]> ofOrdered = new LinkedHashMap<>();
    private final Price low;
    private final Price high;

    PricedDraws(FilledBid filled, JobDraws draws, JobHours hours, Order order, Price stated) {
      this.filled = filled;
      this.hours = hours;
      this.order = order;
      this.stated = stated;
      this.taken = draws.sprayHours();
      order.items().forEach(item -> ofOrdered.put(item, ofOrdered(draws, item)));
      double[] direct = direct(PriceTerms.of(filled.bid().catalogue()));
      this.low = price(JobDraws.lowDraw(direct));
      this.high = price(JobDraws.highDraw(direct));
    }

    /** What a draw takes of an item against what is ordered of it. */
    private static double[] ofOrdered(JobDraws draws, Order.Item item) {
      double[] paint = draws.paintGal(item.key());
      double need = item.needGal();
      Arrays.setAll(paint, i -> need > 0 ? (paint[i] + item.hoseGal()) / need : 1);
      return paint;
    }

    /** Direct cost of each draw but for what is the same in all: it tells them apart. */
    private double[] direct(PriceTerms terms) {
      double onLabour = 1 + terms.sundries().doubleValue();
      double onPaint = onLabour + terms.taxOnMaterial().doubleValue();
      double wage = JobPrice.burdenedRate(filled.bid().catalogue()).doubleValue();
      double[] direct = new double[taken.length];
      Arrays.setAll(direct, i -> onLabour * wage * at(i).number(JobFigure.TOTAL));
      ofOrdered.forEach(
          (item, share) -> {
            double cost = onPaint * item.cover().cost().doubleValue();
            Arrays.setAll(direct, i -> direct[i] + cost * share[i]);
          });
      return direct;
    }

    private JobHours at(int draw) {
      return hours.withSpray(filled.bid(), taken[draw]);
    }

    private Price price(int draw) {
      List<CostItem> items =
          JobPrice.items(
              filled.bid().catalogue(), at(draw), order, item -> ofOrdered.get(item)[draw]);
      return Price.of(items, PriceTerms.of(filled.bid().catalogue()));
    }

    MoneyBand band(Function<Price, BigDecimal> amount) {
      return MoneyBand.around(amount.apply(low), amount.apply(stated), amount.apply(high));
    }
  }
}
