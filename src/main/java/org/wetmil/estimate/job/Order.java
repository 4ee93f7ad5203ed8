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
  public Order {
    items = List.copyOf(items);
  }

  /**
   * One product in one colour and sheen.
   *
   * @param paintGal paint of its lines in gallons
   * @param hoseGal paint that the hoses keep of it, over all machines that spray it
   * @param cover the containers that cover both
   * @param lines how many lines it is for
   */
  public record Item(
      Coating product,
      String colour,
      String sheen,
      double paintGal,
      double hoseGal,
      Containers containers,
      Cover cover,
      int lines) {

    public double needGal() {
      return paintGal + hoseGal;
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
    Catalogue catalogue = filled.bid().catalogue();
    Map<List<String>, List<FilledLine>> groups = new LinkedHashMap<>();
    filled
        .lines()
        .filter(FilledLine::isCounted)
        .forEach(line -> groups.computeIfAbsent(key(line), none -> new ArrayList<>()).add(line));
    return new Order(
        groups.values().stream().map(lines -> item(filled, catalogue, lines)).toList());
  }

  /** What the hoses of all colours keep, in gallons: the job's paint beside that of its lines. */
  public double hoseGal() {
    return items.stream().mapToDouble(Item::hoseGal).sum();
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

  private static Item item(FilledBid filled, Catalogue catalogue, List<FilledLine> lines) {
    FilledLine first = lines.get(0);
    double paint = lines.stream().mapToDouble(line -> line.base(FilledColumn.PAINT)).sum();
    double hose = hoseGal(catalogue, lines);
    Containers containers = Containers.of(catalogue, first.work().coating(), filled.bid().system());
    return new Item(
        first.work().coating(),
        first.line().text(InputColumn.COLOUR),
        first.line().text(InputColumn.SHEEN),
        paint,
        hose,
        containers,
        containers.cover(paint + hose),
        lines.size());
  }

  /** What lines of one item have in common. */
  public static List<String> key(FilledLine line) {
    return List.of(
        Names.key(line.work().coating().name()),
        Names.key(line.line().text(InputColumn.COLOUR)),
        Names.key(line.line().text(InputColumn.SHEEN)));
  }
}
