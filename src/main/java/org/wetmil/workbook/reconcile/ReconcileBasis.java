package org.wetmil.workbook.reconcile;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Kind;
import org.wetmil.ledger.Ledger;
import org.wetmil.reconcile.ReconcileSettings;
import org.wetmil.reconcile.Reconciler;
import org.wetmil.reconcile.SettingsTaken;
import org.wetmil.workbook.look.Heights;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Rows;

/** The page that says what the figures rest on. */
final class ReconcileBasis {
  private static final int[] WIDTHS = {34, 60, 20, 66};

  private final XSSFSheet sheet;
  private final Look look;
  private final Books books;
  private final Rows rows;

  ReconcileBasis(XSSFSheet sheet, Look look, Books books) {
    this.sheet = sheet;
    this.look = look;
    this.books = books;
    this.rows = new Rows(sheet);
  }

  void write(ReconcileStamp stamp) {
    rows.row().text("Basis of these figures", look.title());
    rows.gap();
    fact("Reconciled on", stamp.date().toString());
    fact("Reconciled by", "Wetmil " + stamp.version());
    fact("Units", books.system().word());
    rows.gap();
    inputs(stamp);
    settings(stamp.settings());
    formulas();
    Pages.widths(sheet, WIDTHS);
    Pages.landscape(sheet, WIDTHS.length, rows.number());
  }

  private void inputs(ReconcileStamp stamp) {
    block("Files read");
    rows.row()
        .text("File", look.heading())
        .text("What it is", look.heading())
        .text("", look.heading())
        .text("SHA-256", look.heading());
    for (ReconcileStamp.Input input : stamp.inputs()) {
      rows.row()
          .text(input.file(), look.text(false))
          .text(input.what(), look.text(true))
          .text("", null)
          .text(input.sha256(), look.text(false));
      height(input.what());
    }
    rows.gap();
  }

  private void settings(SettingsTaken taken) {
    ReconcileSettings settings = books.result().settings();
    block("Settings and starting values");
    rows.row()
        .text("Setting", look.heading())
        .text("Meaning", look.heading())
        .text("Value", look.heading())
        .text("Rests on", look.heading());
    taken.all().forEach(this::setting);
    setting("From", "first day, itself counted", day(settings.from()), "as asked for");
    setting("To", "last day, itself counted", day(settings.to()), "as asked for");
    Stream.concat(Reconciler.HOUSE.stream(), Ledger.HOUSE.stream())
        .forEach(
            figure ->
                setting(
                    figure.name(),
                    figure.meaning(),
                    (figure.value().toPlainString() + " " + figure.unit()).strip(),
                    Kind.HOUSE.word()));
    setting(
        "Lines with formulas",
        "ledger lines up to which the figures of this workbook are formulas",
        Integer.toString(Books.MOST_LIVE_LINES),
        Kind.HOUSE.word());
    setting(
        "US gallon",
        "231 cubic inches; a quart is a quarter, a pint an eighth of it; 3.785411784 L",
        "231 in³",
        "published: NIST Handbook 44, Appendix C (exact)");
    rows.gap();
  }

  private void setting(SettingsTaken.Taken taken) {
    Entry entry = taken.entry();
    String unit = entry.quantity().isNumber() ? entry.quantity().base().symbol() : "";
    String from =
        taken.file().isEmpty()
            ? entry.kind().with(entry.source())
            : "yours: " + taken.file() + ", " + sheetOnly(entry.origin().text());
    setting(
        taken.setting().title(),
        Catalogue.builtIn().row(taken.setting()).text("Meaning"),
        (entry.text() + " " + unit).strip(),
        from);
  }

  /** The sheet and cell without the name of the file, which stands before it. */
  private static String sheetOnly(String origin) {
    return origin.substring(origin.indexOf(']') + 1);
  }

  private static String day(LocalDate day) {
    return day == null ? "no limit" : day.toString();
  }

  private void formulas() {
    block("How it is computed");
    for (String sentence :
        List.of(
            "Used = opening stock + bought + moved in - returned - moved out - left over - waste.",
            "Variance by price = used x (price paid - price bid); by quantity = (used - bid) x price"
                + " bid; together used at the price paid less bid at the price bid (the identity of"
                + " standard costing in textbooks; common practice). Each product is rounded to the"
                + " cent once.",
            "Price paid = amount by volume of the purchases that state both, on the job or else on"
                + " any job. Where the bid states no price the bid is valued at the price paid.",
            "Loss, spread and film that explain the use each take the rest as bid: from paint alone"
                + " they cannot be told apart. A loss below 0 cannot be: film is thin, area short"
                + " or a purchase missing.",
            "The amount of a return or of paint moved out counts as negative, whether the ledger"
                + " writes a minus or not.",
            "Money of each currency is summed by itself. Prices and cost are of the currency that"
                + " most lines are in; a price bid in another is compared with nothing.",
            "Every ledger line stands on Ledger once. A line counts where Coating is filled: write"
                + " job, coating and volume into a line there and the figures follow; State and"
                + " Unmatched keep what was found by this run.",
            "Titles, repeated headings, blank and totals lines are no ledger lines; they are counted"
                + " with the files above.")) {
      rows.row().text(sentence, look.text(true));
      int row = rows.number() - 1;
      sheet.addMergedRegion(new CellRangeAddress(row, row, 0, WIDTHS.length - 1));
      int lines = Heights.lines(sentence, IntStream.of(WIDTHS).sum());
      rows.height(Heights.points(lines));
    }
  }

  private void setting(String name, String meaning, String value, String restsOn) {
    rows.row()
        .text(name, look.text(false))
        .text(meaning, look.text(true))
        .text(value, look.text(false))
        .text(restsOn, look.text(true));
    height(meaning);
  }

  private void height(String text) {
    int lines = Heights.lines(text, WIDTHS[1]);
    rows.height(Heights.points(lines));
  }

  private void fact(String label, String value) {
    rows.row().text(label, look.strong()).text(value, look.text(false));
  }

  private void block(String title) {
    rows.row().text(title, look.block());
    rows.underline(WIDTHS.length, look.block());
  }
}
