package org.wetmil.workbook.fill.page;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.price.Price;
import org.wetmil.quantity.Count;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.look.Canvas;
import org.wetmil.workbook.look.Heights;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;

/**
 * The page for the customer: rooms and scope, the price, what it does not include, how long it
 * holds, notes. It shows no cost, no hours and no paint.
 */
public final class BidPage {
  private static final String CHANGED =
      "The bid was changed after these surfaces were listed: fill it again before this page goes"
          + " out.";

  private static final int[] WIDTHS = {24, 24, 34, 8, 13};
  private static final int LAST = WIDTHS.length - 1;

  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

  private final Canvas page;
  private final Look look;
  private final BidLook own;
  private final FilledBid filled;
  private final Catalogue catalogue;
  private final UnitSystem system;
  private final List<Integer> rooms = new ArrayList<>();
  private int heading;
  private int next;

  public BidPage(XSSFSheet sheet, Look look, FilledBid filled) {
    this.page = new Canvas(sheet);
    this.look = look;
    this.own = new BidLook(look);
    this.filled = filled;
    this.catalogue = filled.bid().catalogue();
    this.system = filled.bid().system();
  }

  /**
   * @param places where the price stands; null for a copy that has no formulas
   */
  public void write(Price price, SummarySheet.Places places, Coin coin, LocalDate date) {
    Pages.widths(page.sheet(), WIDTHS);
    top(date);
    if (places != null) {
      page.formula(2, 0, places.changed().formula(CHANGED), "", look.strong());
    }
    scope();
    int closing = next;
    price(price, places, coin);
    list("Not included", excluded());
    list("Validity", List.of(validity(date)));
    list("Notes", notes());
    acceptance();
    Pages.upright(page.sheet(), WIDTHS.length, next);
    new BidBreaks(page, heading).set(rooms, closing, next);
    // the file is none of the customer's business
    page.sheet().getFooter().setLeft(filled.bid().job().replace("&", "&&"));
  }

  private void top(LocalDate date) {
    page.text(next++, 0, filled.bid().job(), look.title());
    page.text(next++, 0, "Bid for spray painting", look.text(false));
    next++;
    fact("From", catalogue.text(Setting.CONTRACTOR));
    fact("For", catalogue.text(Setting.CUSTOMER));
    fact("Date", DATE.format(date));
    next++;
  }

  private void fact(String label, String value) {
    if (!value.isEmpty()) {
      page.text(next, 0, label, look.strong()).text(next++, 1, value, look.text(false));
    }
  }

  private void scope() {
    List<String> headings =
        List.of("Room", "Surface", "Coating", "Coats", FilledColumn.NET_AREA.heading(system));
    for (int i = 0; i < headings.size(); i++) {
      page.text(next, i, headings.get(i), look.band(i > 2));
    }
    heading = next++;
    List<Group> groups =
        Group.of(
            filled,
            line ->
                List.of(
                    Names.key(line.line().text(InputColumn.FLOOR)),
                    Names.key(line.line().text(InputColumn.ROOM))),
            HoursKeys::room);
    for (Group room : groups) {
      boolean first = true;
      for (FilledLine line : room.lines().stream().filter(BidPage::hasScope).toList()) {
        if (first) {
          rooms.add(next);
          page.text(next, 0, place(line), own.roomText());
        }
        line(line, first);
        first = false;
      }
    }
    next++;
  }

  private void line(FilledLine line, boolean first) {
    String surface = line.line().text(InputColumn.SURFACE);
    String coating = coating(line);
    page.text(next, 1, surface, first ? own.roomText() : look.text(true));
    page.text(next, 2, coating, first ? own.roomText() : look.text(true));
    page.number(
        next,
        3,
        line.figures().get(FilledColumn.COATS).number(),
        first ? own.roomNumber(0) : look.number(0));
    page.number(
        next,
        4,
        FilledColumn.NET_AREA.quantity().shown(line.base(FilledColumn.NET_AREA), system),
        first ? own.roomNumber(decimals()) : look.number(decimals()));
    page.across(next, 0, 0, first ? own.roomText() : look.text(true));
    double height =
        Math.max(
            first ? Heights.of(place(line), WIDTHS[0], 11) : 0,
            Math.max(Heights.of(surface, WIDTHS[1], 11), Heights.of(coating, WIDTHS[2], 11)));
    page.height(next++, height);
  }

  private int decimals() {
    return system == UnitSystem.US ? 0 : 1;
  }

  private static String coating(FilledLine line) {
    return String.join(
        ", ",
        Stream.of(
                line.work().coating().name(),
                line.line().text(InputColumn.COLOUR),
                line.line().text(InputColumn.SHEEN))
            .filter(word -> !word.isEmpty())
            .toList());
  }

  private static String place(FilledLine line) {
    String floor = line.line().text(InputColumn.FLOOR);
    String room = line.line().text(InputColumn.ROOM);
    boolean both = !floor.isEmpty() && !room.isEmpty() && !floor.equalsIgnoreCase(room);
    return both ? room + ", " + floor : room + (room.isEmpty() ? floor : "");
  }

  private void price(Price price, SummarySheet.Places places, Coin coin) {
    String currency = catalogue.text(Setting.CURRENCY);
    page.text(next, 0, "Price", look.block()).across(next, 0, LAST, look.block());
    next++;
    paragraph(
        "For the surfaces above: preparation as their condition wants, masking, materials, spraying,"
            + " touch-up and clean-up.");
    boolean taxed = price.tax().signum() != 0;
    if (taxed) {
      String tax = places == null ? null : places.price() + "-" + places.beforeTax();
      amount("Before tax", places == null ? null : places.beforeTax(), price.beforeTax(), coin);
      amount("Tax", tax, price.tax(), coin);
    }
    page.text(next, 0, taxed ? "To be paid" : "Price of the work", own.figureWords());
    page.formula(
        next,
        3,
        places == null ? null : places.price(),
        price.total().doubleValue(),
        own.figureMoney(coin.decimals()));
    page.text(next, 2, currency, own.figureUnit());
    page.merged(next, 3, LAST).height(next, 30);
    next += 2;
  }

  private void amount(String label, String formula, BigDecimal value, Coin coin) {
    page.text(next, 0, label, look.text(false));
    page.formula(next, LAST, formula, value.doubleValue(), coin.look());
    next++;
  }

  private List<String> excluded() {
    List<String> all = new ArrayList<>();
    filled
        .lines()
        .filter(line -> !line.isCounted() || !hasScope(line))
        .map(line -> named(line) + (line.isFilled() && hasScope(line) ? "" : " (not priced yet)"))
        .distinct()
        .forEach(all::add);
    all.addAll(parts(Setting.EXCLUSIONS));
    all.add("Whatever is not listed above.");
    return all;
  }

  /** Whether there is anything to paint: openings that take a whole wall are a slip. */
  private static boolean hasScope(FilledLine line) {
    return line.base(FilledColumn.NET_AREA) > 0;
  }

  private static String named(FilledLine line) {
    return Stream.of(place(line), line.line().text(InputColumn.SURFACE))
        .filter(word -> !word.isEmpty())
        .reduce((a, b) -> a + ": " + b)
        .orElse("A line without a room");
  }

  private String validity(LocalDate date) {
    long days = Math.round(catalogue.number(Setting.VALIDITY));
    return "This price holds for %s, until %s."
        .formatted(Count.of(days, "day"), DATE.format(date.plusDays(days)));
  }

  private List<String> notes() {
    List<String> all = new ArrayList<>(parts(Setting.BID_NOTES));
    all.add(
        "Nobody but the crew enters while we spray, nor until the vapours have cleared; the data"
            + " sheets of the coatings say how long.");
    return all;
  }

  private List<String> parts(Setting setting) {
    return Stream.of(catalogue.text(setting).split(";"))
        .map(String::strip)
        .filter(part -> !part.isEmpty())
        .map(part -> part.substring(0, 1).toUpperCase(Locale.ROOT) + part.substring(1))
        .toList();
  }

  private void list(String title, List<String> sentences) {
    page.text(next, 0, title, look.block()).across(next, 0, LAST, look.block());
    next++;
    sentences.forEach(this::paragraph);
    next++;
  }

  private void paragraph(String text) {
    page.paragraph(next++, text, WIDTHS, look.text(true));
  }

  private void acceptance() {
    next++;
    page.text(next, 0, "Accepted, date", own.lineAbove()).across(next, 0, 1, own.lineAbove());
    page.text(next, 2, "Signature", own.lineAbove()).across(next, 2, LAST, own.lineAbove());
    next++;
  }
}
