package org.wetmil.workbook.fill.page;

import java.math.BigDecimal;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.job.Order;
import org.wetmil.estimate.price.Cover;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.workbook.fill.beside.Totals;
import org.wetmil.workbook.look.Heights;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Rows;
import org.wetmil.workbook.look.Texts;

/**
 * The list of what to buy: one row for each product, colour, sheen and size of container. What is
 * needed follows the bid; how many containers is a choice. Where a product takes two sizes, the
 * second row leaves out what the first says of the product, so that columns add up.
 */
final class OrderSheet {
  private final XSSFSheet sheet;
  private final Look look;
  private final FilledBid filled;
  private final HoursSums sums;
  private final Coin coin;
  private final Unit unit;
  private final Rows rows;

  OrderSheet(XSSFSheet sheet, Look look, FilledBid filled, HoursSums sums, Coin coin) {
    this.sheet = sheet;
    this.look = look;
    this.filled = filled;
    this.sums = sums;
    this.coin = coin;
    this.unit = Quantity.VOLUME.unit(filled.bid().system());
    this.rows = new Rows(sheet);
  }

  void write(Order order) {
    rows.row();
    for (OrderColumn column : OrderColumn.values()) {
      String symbol = column.isVolume() ? " (" + unit.symbol() + ")" : "";
      rows.text(column.heading() + symbol, look.heading());
      Pages.width(sheet, column.ordinal(), column.width());
    }
    rows.height(Heights.HEADING_PT);
    List<Group> groups = Group.of(filled, Order::key, HoursKeys::order);
    for (int i = 0; i < order.items().size(); i++) {
      item(order.items().get(i), groups.get(i));
    }
    sheet.createFreezePane(0, 1);
    sheet.setAutoFilter(
        new CellRangeAddress(0, rows.number() - 1, 0, OrderColumn.values().length - 1));
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    Pages.landscape(sheet, OrderColumn.KEY.ordinal(), rows.number());
    Pages.narrowMargins(sheet);
  }

  private void item(Order.Item item, Group group) {
    String key = HoursKeys.order(group.first());
    List<Cover.Lot> lots = item.cover().lots();
    if (lots.isEmpty()) {
      row(item, group, key, null, true);
    }
    for (int i = 0; i < lots.size(); i++) {
      row(item, group, key, lots.get(i), i == 0);
    }
  }

  private void row(Order.Item item, Group group, String key, Cover.Lot lot, boolean first) {
    rows.row();
    for (OrderColumn column : OrderColumn.values()) {
      switch (column) {
        case PAINT -> rows.text(item.product().name(), look.strong());
        case COLOUR -> rows.text(item.colour(), look.text(false));
        case SHEEN -> rows.text(item.sheen(), look.text(false));
        case KEY -> rows.text(key, look.text(false));
        case SIZE, UNIT, COUNT, VOLUME, UNIT_PRICE, AMOUNT, CURRENCY ->
            only(lot != null, () -> lot(column, item, lot));
        default -> only(first, () -> need(column, item, group));
      }
    }
  }

  private void only(boolean really, Runnable cell) {
    if (really) {
      cell.run();
    } else {
      rows.skip(1);
    }
  }

  private void need(OrderColumn column, Order.Item item, Group group) {
    int row = rows.number();
    switch (column) {
      case ON_LINES ->
          rows.formula(
              sums.ofKeys(HoursColumn.PAINT, HoursColumn.ORDER_KEY, group.keys()),
              shown(item.paintGal()),
              look.number(2));
      case IN_HOSES -> rows.number(shown(item.hoseGal()), look.number(2));
      case ALLOWANCE ->
          rows.formula(allowance(item, row), shown(item.allowanceGal()), look.sparse(2));
      case NEED ->
          rows.formula(
              OrderColumn.ON_LINES.in(row)
                  + "+"
                  + OrderColumn.IN_HOSES.in(row)
                  + "+"
                  + OrderColumn.ALLOWANCE.in(row),
              shown(item.needGal()),
              look.number(2));
      case LEFT_OVER ->
          rows.formula(
              leftOver(HoursKeys.order(group.first()), row),
              item.containers().unit().to(unit, item.cover().leftOver()),
              look.number(2));
      case LINES -> rows.number(item.lines(), look.number(0));
      default -> throw new IllegalArgumentException(column.name());
    }
  }

  /** A share of the paint on the lines; none where the order goes by the likely figure. */
  private static String allowance(Order.Item item, int row) {
    return item.allowanceGal() == 0
        ? null
        : OrderColumn.ON_LINES.in(row) + "*" + Totals.plain(item.allowanceGal() / item.paintGal());
  }

  private String leftOver(String key, int row) {
    return HoursSums.isTooLong(key)
        ? null
        : "SUMIF(%s,%s,%s)-%s"
            .formatted(
                OrderColumn.KEY.whole(sheet.getSheetName()),
                Texts.criterion(key),
                OrderColumn.VOLUME.whole(sheet.getSheetName()),
                OrderColumn.NEED.in(row));
  }

  private void lot(OrderColumn column, Order.Item item, Cover.Lot lot) {
    int row = rows.number();
    Unit size = item.containers().unit();
    BigDecimal price = lot.container().price();
    switch (column) {
      case SIZE -> rows.number(lot.container().size().doubleValue(), look.plain());
      case UNIT -> rows.text(size.symbol(), look.unit());
      case COUNT -> rows.number(lot.count(), look.choice());
      case VOLUME -> {
        double factor = size.si() / unit.si();
        rows.formula(
            OrderColumn.SIZE.in(row)
                + "*"
                + OrderColumn.COUNT.in(row)
                + (factor == 1 ? "" : "*" + Totals.plain(factor)),
            lot.container().size().doubleValue() * lot.count() * factor,
            look.number(2));
      }
      case UNIT_PRICE -> only(price != null, () -> rows.number(price.doubleValue(), coin.look()));
      case AMOUNT ->
          only(
              price != null,
              () ->
                  rows.formula(
                      coin.rounded(
                          OrderColumn.COUNT.in(row) + "*" + OrderColumn.UNIT_PRICE.in(row)),
                      coin.rounded(price.multiply(BigDecimal.valueOf(lot.count()))).doubleValue(),
                      coin.look()));
      case CURRENCY ->
          only(
              price != null,
              () -> rows.text(filled.bid().catalogue().text(Setting.CURRENCY), look.unit()));
      default -> throw new IllegalArgumentException(column.name());
    }
  }

  private double shown(double gal) {
    return Quantity.VOLUME.shown(gal, filled.bid().system());
  }
}
