package org.wetmil.estimate.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Sprayer;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.price.Containers;
import org.wetmil.estimate.price.Cover;
import org.wetmil.trade.Hose;

/**
 * What to buy: whole containers for each product, colour and sheen of the lines that count.
 * Containers are never shared across colours.
 */
public record Order(List<Item> items) {
  /** The word of the setting Order by. */
  private static final String ENOUGH_IN_NINE_OF_TEN = "90 %";

  public Order {
    items = List.copyOf(items);
  }

  /**
   * One product in one colour and sheen.
   *
   * @param paintGal paint of its lines in gallons
   * @param enoughGal what would be enough for them in nine jobs of ten; NaN where it was not asked
   * @param allowanceGal what is ordered beyond the paint of the lines: up to what is enough, or 0
   *     where the order goes by the likely figure
   * @param hoseGal paint that the hoses keep of it, over all machines that spray it
   * @param cover the containers that cover both
   * @param lines how many lines it is for
   */
  public record Item(
      Coating product,
      String colour,
      String sheen,
      double paintGal,
      double enoughGal,
      double allowanceGal,
      double hoseGal,
      Containers containers,
      Cover cover,
      int lines) {

    public double needGal() {
      return paintGal + allowanceGal + hoseGal;
    }

    /** What its lines have in common. */
    List<String> key() {
      return Order.key(product.name(), colour, sheen);
    }

    /** The product with its colour and sheen, for the reader. */
    public String title() {
      StringBuilder title = new StringBuilder(product.name());
      for (String word : List.of(colour, sheen)) {
        title.append(word.isBlank() ? "" : ", " + word);
      }
      return title.toString();
    }
  }

  /** The order for a bid, in the order in which its lines name products and colours. */
  public static Order of(FilledBid filled) {
    Map<List<String>, List<FilledLine>> groups = groups(filled);
    return of(filled, groups, JobDraws.of(filled.bid(), groups));
  }

  static Order of(FilledBid filled, Map<List<String>, List<FilledLine>> groups, JobDraws draws) {
    return of(filled, groups, (key, paint) -> draws.paintBand(key, paint).high());
  }

  /**
   * The same order in a fraction of the time, for many bids: what would be enough in nine jobs of
   * ten is drawn only where the order goes by it, and is not known otherwise.
   */
  public static Order asBought(FilledBid filled) {
    return goesByEnough(filled.bid().catalogue())
        ? of(filled)
        : of(filled, groups(filled), (key, paint) -> Double.NaN);
  }

  private static Order of(
      FilledBid filled, Map<List<String>, List<FilledLine>> groups, Enough enough) {
    return new Order(groups.values().stream().map(lines -> item(filled, enough, lines)).toList());
  }

  /** What would be enough of an item in nine jobs of ten. */
  private interface Enough {
    double gal(List<String> key, double paintGal);
  }

  private static boolean goesByEnough(Catalogue catalogue) {
    return catalogue.text(Setting.ORDER_BY).equals(ENOUGH_IN_NINE_OF_TEN);
  }

  /** The lines that count by what is bought for them together. */
  static Map<List<String>, List<FilledLine>> groups(FilledBid filled) {
    Map<List<String>, List<FilledLine>> groups = new LinkedHashMap<>();
    filled
        .lines()
        .filter(FilledLine::isCounted)
        .forEach(line -> groups.computeIfAbsent(key(line), none -> new ArrayList<>()).add(line));
    return groups;
  }

  /** What the hoses of all colours keep, in gallons: the job's paint beside that of its lines. */
  public double hoseGal() {
    return items.stream().mapToDouble(Item::hoseGal).sum();
  }

  /** What would be enough of every colour in nine jobs of ten, in gallons. */
  public double enoughGal() {
    return items.stream().mapToDouble(item -> item.enoughGal() + item.hoseGal()).sum();
  }

  /** What the hoses of all colours of a bid keep, in gallons. */
  public static double hoseGal(FilledBid filled) {
    return groups(filled).values().stream()
        .mapToDouble(lines -> hoseGal(filled.bid().catalogue(), lines))
        .sum();
  }

  /**
   * Paint that one colour leaves in the hoses: hose volume and residue of each machine that sprays
   * it, since it is filled and emptied once for each.
   */
  static double hoseGal(Catalogue catalogue, List<FilledLine> lines) {
    Set<Sprayer> machines = new LinkedHashSet<>();
    lines.stream()
        .map(line -> line.work().sprayer())
        .filter(sprayer -> sprayer != null && sprayer.hasHose())
        .forEach(machines::add);
    Coating product = lines.get(0).work().coating();
    return machines.stream()
        .mapToDouble(
            machine -> hose(machine, product).volumeGal() + catalogue.number(Setting.HOSE_RESIDUE))
        .sum();
  }

  private static Hose hose(Sprayer machine, Coating product) {
    double riseFt = Double.isNaN(machine.riseFt()) ? 0 : machine.riseFt();
    return new Hose(
        machine.hoseBoreIn(),
        machine.hoseLengthFt(),
        riseFt,
        product.densityKgL(),
        product.viscosityPaS());
  }

  private static Item item(FilledBid filled, Enough enoughOf, List<FilledLine> lines) {
    Catalogue catalogue = filled.bid().catalogue();
    FilledLine first = lines.get(0);
    double paint = lines.stream().mapToDouble(line -> line.base(FilledColumn.PAINT)).sum();
    double enough = enoughOf.gal(key(first), paint);
    double allowance = goesByEnough(catalogue) ? enough - paint : 0;
    double hose = hoseGal(catalogue, lines);
    Containers containers = Containers.of(catalogue, first.work().coating(), filled.bid().system());
    return new Item(
        first.work().coating(),
        first.line().text(InputColumn.COLOUR),
        first.line().text(InputColumn.SHEEN),
        paint,
        enough,
        allowance,
        hose,
        containers,
        containers.cover(paint + allowance + hose),
        lines.size());
  }

  /** What lines of one item have in common. */
  public static List<String> key(FilledLine line) {
    return key(
        line.work().coating().name(),
        line.line().text(InputColumn.COLOUR),
        line.line().text(InputColumn.SHEEN));
  }

  private static List<String> key(String product, String colour, String sheen) {
    return List.of(Names.key(product), Names.key(colour), Names.key(sheen));
  }
}
