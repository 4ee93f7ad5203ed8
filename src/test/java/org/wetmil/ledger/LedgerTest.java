package org.wetmil.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.ledger.LedgerColumn.DESCRIPTION;
import static org.wetmil.ledger.LedgerColumn.DOCUMENT;
import static org.wetmil.ledger.LedgerColumn.ITEM;
import static org.wetmil.ledger.LedgerColumn.JOB;
import static org.wetmil.ledger.LedgerColumn.VENDOR;

import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LedgerTest {
  private static final String HEAD =
      "Date,Job,PO,Vendor,Item,Description,Qty,UOM,Unit price,Amount";

  @Test
  void aPlainLineIsReadWhole() {
    LedgerLine line =
        Ledgers.read(
                HEAD,
                "2026-03-04,1042,PO-7,Depot,LTX-5,Latex eggshell,4,pail of 5 gal,150.00,600.00")
            .only();

    assertThat(line.date()).isEqualTo(LocalDate.of(2026, 3, 4));
    assertThat(line.text(JOB)).isEqualTo("1042");
    assertThat(line.text(DOCUMENT)).isEqualTo("PO-7");
    assertThat(line.text(VENDOR)).isEqualTo("Depot");
    assertThat(line.text(ITEM)).isEqualTo("LTX-5");
    assertThat(line.text(DESCRIPTION)).isEqualTo("Latex eggshell");
    assertThat(line.quantity()).isEqualByComparingTo("4");
    assertThat(line.unitGal()).isEqualTo(5);
    assertThat(line.volumeGal()).isEqualTo(20);
    assertThat(line.unitPrice()).isEqualByComparingTo("150");
    assertThat(line.amount()).isEqualTo(new BigDecimal("600.00"));
    assertThat(line.kind()).isEqualTo(LineKind.PURCHASE);
    assertThat(line.line()).isEqualTo(2);
    assertThat(line.record()).isEqualTo(2);
    assertThat(line.problems()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(chars = {',', ';', '\t'})
  void theDelimiterIsFoundFromTheContent(char delimiter) {
    Ledgers.Read read =
        Ledgers.read(
            HEAD.replace(',', delimiter),
            "2026-03-04,1042,PO-7,Depot,LTX-5,Latex,4,gal,150.00,600.00".replace(',', delimiter));

    assertThat(read.layout().delimiter()).isEqualTo(delimiter);
    assertThat(read.only().amount()).isEqualByComparingTo("600");
  }

  @ParameterizedTest
  @CsvSource({
    "UTF-8, '', UTF-8",
    "UTF-8, \uFEFF, UTF-8",
    "UTF-16LE, \uFEFF, UTF-16LE",
    "UTF-16BE, \uFEFF, UTF-16BE",
    "UTF-16LE, '', UTF-16LE",
    "UTF-16BE, '', UTF-16BE",
    "windows-1252, '', windows-1252"
  })
  void theEncodingIsFoundFromTheBytes(String written, String mark, String found) {
    String text = mark + "Item,Menge,Betrag\nWeißlack für Türen,2,\"31,50 €\"\n";

    Ledgers.Read read = Ledgers.read(text, Charset.forName(written));

    assertThat(read.layout().encoding()).isEqualTo(Charset.forName(found));
    assertThat(read.only().text(ITEM)).isEqualTo("Weißlack für Türen");
    assertThat(read.only().amount()).isEqualByComparingTo("31.5");
    assertThat(read.only().currency()).isEqualTo("EUR");
  }

  @Test
  void aLetterOutsideAsciiLateInALongFileStillDecidesTheEncoding() {
    String text =
        "Item,Qty,Amount\n" + "latex,1,10.00\n".repeat(20_000) + "Lasur f\u00fcr T\u00fcr,1,5\n";

    Ledgers.Read read = Ledgers.read(text, Charset.forName("windows-1252"));

    assertThat(read.lines()).hasSize(20_001);
    assertThat(read.lines().get(20_000).text(ITEM)).isEqualTo("Lasur für Tür");
  }

  @Test
  void aLineIsSeenOnceThoughAQuoteIsNeverClosed() {
    Ledgers.Read read =
        Ledgers.read(
            "Date,Item,Quantity,Amount",
            "3/24/26,latex,1,USD 10.00",
            "3/25/26,latex,1,USD 10.00",
            "24/3/26,\"latex,1,10.00",
            "25/3/26,latex,1,10.00",
            "26/3/26,latex,1,10.00");

    assertThat(read.layout().dateOrder()).isEqualTo(DateOrder.DAY_FIRST);
    assertThat(read.lines()).hasSize(5);
  }

  @Test
  void quotedFieldsHoldDelimitersQuotesAndLineBreaks() {
    Ledgers.Read read =
        Ledgers.read(
            "Item,Description,Qty,Amount",
            "\"latex, white\",\"two lines\r\nof text, with \"\"quotes\"\"\",1,10.00",
            "primer,,2,20.00");

    assertThat(read.lines()).hasSize(2);
    assertThat(read.lines().get(0).text(ITEM)).isEqualTo("latex, white");
    assertThat(read.lines().get(0).text(DESCRIPTION))
        .isEqualTo("two lines\r\nof text, with \"quotes\"");
    assertThat(read.lines().get(0).problems()).isEmpty();
    assertThat(read.lines().get(1).line()).isEqualTo(4);
    assertThat(read.lines().get(1).record()).isEqualTo(3);
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void everyLineEndingEndsALine(String ending) {
    Ledgers.Read read =
        Ledgers.read(
            String.join(ending, "Item,Qty,Amount", "latex,1,10", "primer,2,20", ""),
            StandardCharsets.UTF_8);

    assertThat(read.lines()).extracting(line -> line.text(ITEM)).containsExactly("latex", "primer");
  }

  @Test
  void anInchMarkInsideAFieldIsNoQuote() {
    Ledgers.Read read = Ledgers.read("Item,Qty,Amount", "Brush 3\" wide,1,10.00", "latex,1,30.00");

    assertThat(read.lines()).hasSize(2);
    assertThat(read.lines().get(0).text(ITEM)).isEqualTo("Brush 3\" wide");
  }

  @Test
  void aQuoteThatNeverClosesSwallowsNoLine() {
    Ledgers.Read read =
        Ledgers.read("Item,Qty,Amount", "\"latex,1,10.00", "primer,2,20.00", "stain,3,30.00");

    assertThat(read.lines())
        .extracting(line -> line.text(ITEM))
        .containsExactly("\"latex", "primer", "stain");
    assertThat(read.layout().notes())
        .extracting(LedgerNote::type)
        .containsExactly(LedgerNote.Type.QUOTES_AS_TEXT);
  }

  @Test
  void linesInsideOneCellAreReported() {
    Ledgers.Read read =
        Ledgers.read("Item,Qty,Amount", "\"latex,1,10.00", "primer,2,20.00", "\"stain\",3,30.00");

    assertThat(read.lines())
        .anySatisfy(
            line ->
                assertThat(line.problems())
                    .extracting(LineProblem::type)
                    .contains(LineProblem.Type.LINES_IN_A_CELL));
  }

  @Test
  void titleBlankAndTotalsLinesAreCountedApart() {
    Ledgers.Read read =
        Ledgers.read(
            "Purchases by job,,,",
            "\"March 1, 2026 to March 31, 2026\",,,",
            "",
            "Date,Item,Qty,Amount",
            "Clinic refit,,,",
            "2026-03-01,latex,1,10.10",
            "2026-03-02,primer,2,20.20",
            ",,,",
            "Total Clinic refit,,,30.30",
            "Date,Item,Qty,Amount",
            "2026-03-03,stain,2,5.00",
            "TOTAL,,,35.30");

    assertThat(read.lines()).hasSize(3);
    assertThat(read.counts().lines()).isEqualTo(3);
    assertThat(read.counts().titles()).isEqualTo(4);
    assertThat(read.counts().blanks()).isEqualTo(2);
    assertThat(read.counts().totals()).hasSize(2).noneMatch(TotalsLine::isInDoubt);
  }

  @Test
  void aTotalsLineThatDoesNotAddUpKeepsBothFigures() {
    Ledgers.Read read =
        Ledgers.read("Date,Item,Qty,Amount", "2026-03-01,latex,1,10.00", "Summe,,,10.01");

    TotalsLine total = read.counts().totals().get(0);
    assertThat(total.isInDoubt()).isTrue();
    assertThat(total.stated()).isEqualByComparingTo("10.01");
    assertThat(total.sum()).hasValue(new BigDecimal("10.00"));
    assertThat(total.line()).isEqualTo(3);
  }

  @Test
  void aPurchaseWhoseItemBeginsWithTotalIsNoTotalsLine() {
    Ledgers.Read read =
        Ledgers.read("Item,Qty,UOM,Amount", "Total cover primer,2,gal,60.00", "latex,1,gal,30.00");

    assertThat(read.lines()).hasSize(2);
  }

  @Test
  void anUnreadableQuantityStillLeavesTheAmount() {
    LedgerLine line =
        Ledgers.read("Item,Qty,UOM,Unit price,Amount", "latex,some,gal,x,99.95").only();

    assertThat(line.quantity()).isNull();
    assertThat(line.hasVolume()).isFalse();
    assertThat(line.amount()).isEqualByComparingTo("99.95");
    assertThat(line.problems())
        .extracting(LineProblem::column, LineProblem::raw)
        .containsExactly(tuple(LedgerColumn.QUANTITY, "some"), tuple(LedgerColumn.UNIT_PRICE, "x"));
  }

  @Test
  void anAmountThatIsNotStatedIsQuantityTimesPrice() {
    LedgerLine line = Ledgers.read("Item,Qty,Unit price", "latex,3,33.335").only();

    assertThat(line.amount()).isEqualTo(new BigDecimal("100.01"));
    assertThat(line.amountComputed()).isTrue();
  }

  @Test
  void anAmountFarFromQuantityTimesPriceIsReported() {
    Ledgers.Read read =
        Ledgers.read(
            "Item,Qty,Unit price,Amount",
            "latex,4,30.00,600.00",
            "latex,4,30.00,121.20",
            "latex,4,30.00,121.22",
            "return,-4,30.00,120.00");

    assertThat(read.lines().get(0).problems())
        .extracting(LineProblem::type)
        .containsExactly(LineProblem.Type.AMOUNT_DIFFERS);
    assertThat(read.lines().get(1).problems()).isEmpty();
    assertThat(read.lines().get(2).problems()).hasSize(1);
    assertThat(read.lines().get(3).problems()).isEmpty();
  }

  @Test
  void linesTooShortOrTooLongAreReportedAndKept() {
    Ledgers.Read read =
        Ledgers.read(
            "Item,Qty,Amount,Remark",
            "latex,1",
            "latex,1,10.00",
            "latex,1,10.00,x,,",
            "latex,1,1,234.00,x");

    assertThat(read.lines().get(0).problems())
        .extracting(LineProblem::type)
        .containsExactly(LineProblem.Type.TOO_SHORT);
    assertThat(read.lines().get(1).problems()).isEmpty();
    assertThat(read.lines().get(2).problems()).isEmpty();
    assertThat(read.lines().get(3).problems())
        .extracting(LineProblem::type)
        .containsExactly(LineProblem.Type.TOO_LONG);
  }

  @Test
  void whatGoesBackTakesItsMoneyAlongWhateverItsSign() {
    Ledgers.Read read =
        Ledgers.read(
            "Tipo;Articulo;Cantidad;Unidad;Precio;Importe",
            "Compra;latex;3;gal;40,00;120,00",
            "Devolución;latex;1;gal;40,00;40,00",
            "Devolución;latex;1;gal;40,00;-40,00",
            "Compra;latex;-1;gal;40,00;40,00",
            "Devolución;latex;1;gal;40,00;",
            "Traspaso salida;latex;1;gal;40,00;40,00",
            "Traspaso entrada;latex;1;gal;40,00;40,00",
            "Total;;;;;-40,00");

    assertThat(read.lines())
        .extracting(line -> line.amount().toPlainString())
        .containsExactly("120.00", "-40.00", "-40.00", "-40.00", "-40.00", "-40.00", "40.00");
    assertThat(read.counts().totals()).hasSize(1).noneMatch(TotalsLine::isInDoubt);
  }

  @Test
  void theKindIsReadFromItsWordOrElseFromTheSigns() {
    Ledgers.Read read =
        Ledgers.read(
            "Type,Item,Qty,UOM,Amount",
            "Bill,latex,5,gal,100",
            "Credit memo,latex,5,gal,100",
            "Transfer,latex,5,gal,",
            "Transfer,latex,-5,gal,",
            "Left over,latex,2,gal,",
            "Waste,latex,1,gal,",
            "Opening stock,latex,3,gal,",
            ",latex,-2,gal,(40.00)",
            "Bill,latex,-2,gal,-40.00",
            "Journal,latex,2,gal,40.00");

    assertThat(read.lines())
        .extracting(LedgerLine::kind)
        .containsExactly(
            LineKind.PURCHASE,
            LineKind.RETURN,
            LineKind.TRANSFER_IN,
            LineKind.TRANSFER_OUT,
            LineKind.LEFT_OVER,
            LineKind.WASTE,
            LineKind.OPENING_STOCK,
            LineKind.RETURN,
            LineKind.RETURN,
            LineKind.PURCHASE);
    assertThat(read.lines()).allMatch(line -> line.volumeGal() >= 0);
    assertThat(read.lines().get(8).problems())
        .extracting(LineProblem::type)
        .containsExactly(LineProblem.Type.READ_AS_RETURN);
    assertThat(read.lines().get(9).problems())
        .extracting(LineProblem::type)
        .containsExactly(LineProblem.Type.UNKNOWN_KIND);
  }

  @Test
  void aGermanLedgerIsRead() {
    Ledgers.Read read =
        Ledgers.read(
            "Einkäufe März;;;;;;",
            "Belegdatum;Baustelle;Rechnungs-Nr.;Artikel;Menge;Einheit;Einzelpreis (€);Gesamtpreis (€)",
            "04.03.2026;Klinik;R-1;Dispersion weiß;2;Eimer 12,5 L;1.062,75;2.125,50",
            "05.03.26;Klinik;R-2;Lack;-1;Dose 750 ml;20,00;-20,00",
            "Summe;;;;;;;2.105,50");

    assertThat(read.layout().currency()).isEqualTo("EUR");
    assertThat(read.lines().get(0).date()).isEqualTo(LocalDate.of(2026, 3, 4));
    assertThat(read.lines().get(0).amount()).isEqualByComparingTo("2125.5");
    assertThat(read.lines().get(0).unitGal()).isCloseTo(12.5 / 3.785411784, within(1e-12));
    assertThat(read.lines().get(1).kind()).isEqualTo(LineKind.RETURN);
    assertThat(read.lines().get(1).date()).isEqualTo(LocalDate.of(2026, 3, 5));
    assertThat(read.counts().totals()).hasSize(1).noneMatch(TotalsLine::isInDoubt);
  }

  @Test
  void aSpanishLedgerIsRead() {
    LedgerLine line =
        Ledgers.read(
                "Fecha;Obra;Factura;Descripción;Cantidad;Unidad;Precio unitario;Importe;Tipo",
                "24/03/2026;Clínica;F-9;Pintura látex;3;cubeta de 19 L;95,00;285,00;Compra")
            .only();

    assertThat(line.date()).isEqualTo(LocalDate.of(2026, 3, 24));
    assertThat(line.unitGal()).isCloseTo(19 / 3.785411784, within(1e-12));
    assertThat(line.amount()).isEqualByComparingTo("285");
    assertThat(line.kind()).isEqualTo(LineKind.PURCHASE);
  }

  @Test
  void ofTwoHeadingsForOneColumnTheListDecides() {
    Ledgers.Read read =
        Ledgers.read("PO,Invoice No.,Item,Qty,Total,Line amount", "P1,I1,latex,1,11,10");

    assertThat(read.only().text(DOCUMENT)).isEqualTo("I1");
    assertThat(read.only().amount()).isEqualByComparingTo("10");
    assertThat(read.layout().unused()).containsExactly("PO", "Total");
  }

  @Test
  void aFileWithoutUsableHeadingsSaysWhichAreThere() {
    assertThatThrownBy(() -> Ledgers.read("Room,Length,Height", "Hall,10,8"))
        .hasMessageContaining("may.csv")
        .hasMessageContaining("Room | Length | Height")
        .hasMessageContaining("Quantity or Amount");
    assertThatThrownBy(() -> Ledgers.read("")).hasMessage("may.csv holds nothing.");
  }

  private static List<String> currencies(String... amounts) {
    String[] lines =
        Stream.concat(
                Stream.of("Item,Qty,Amount"), Stream.of(amounts).map(amount -> "latex,1," + amount))
            .toArray(String[]::new);
    return Ledgers.read(lines).lines().stream().map(LedgerLine::currency).toList();
  }

  @Test
  void severalCurrenciesStandOnTheirLines() {
    assertThat(currencies("$10.00", "€12.00", "5.00")).containsExactly("$", "EUR", "");
  }

  @Test
  void aCurrencyNamedOnMostLinesOrOnTheFirstOrTheTotalIsThatOfAll() {
    assertThat(currencies("$10.00", "5.00", "6.00")).containsOnly("$");
    assertThat(currencies("10.00", "$5.00", "$6.00", "7.00")).containsOnly("$");
    assertThat(
            Ledgers.read("Item,Qty,Amount", "latex,1,5.00", "latex,1,6.00", "Total,,$11.00")
                .lines())
        .extracting(LedgerLine::currency)
        .containsOnly("$");
  }

  @Test
  void aCurrencyThatIsNamedAsAnExceptionIsThatOfItsLineAlone() {
    assertThat(currencies("10.00", "€5.00", "6.00", "7.00")).containsExactly("", "EUR", "", "");
  }

  @Test
  void theCurrencyColumnComesBeforeTheMarkOfTheAmount() {
    Ledgers.Read read =
        Ledgers.read(
            "Item,Qty,Amount,Currency", "latex,1,$10.00,CAD", "latex,1,$5.00,USD", "latex,1,4.00,");

    assertThat(read.lines()).extracting(LedgerLine::currency).containsExactly("CAD", "USD", "");
  }

  @Test
  void aTotalsLineIsComparedWithTheSumOfItsCurrencyOrWithNone() {
    String[] lines = {"Item,Qty,Amount", "latex,1,$10.00", "latex,1,€12.00"};
    TotalsLine dollars = total(lines, "Total,,$10.00");
    TotalsLine mixed = total(lines, "Total,,22.00");

    assertThat(dollars.isInDoubt()).isFalse();
    assertThat(dollars.sum()).hasValue(new BigDecimal("10.00"));
    assertThat(mixed.isInDoubt()).isTrue();
    assertThat(mixed.sum()).isEmpty();
  }

  private static TotalsLine total(String[] lines, String total) {
    return Ledgers.read(Stream.concat(Stream.of(lines), Stream.of(total)).toArray(String[]::new))
        .counts()
        .totals()
        .get(0);
  }

  @Test
  void aDollarSignMayBeAnyDollarAndNoOtherMoney() {
    assertThat(CurrencyName.contradict("$", "USD")).isFalse();
    assertThat(CurrencyName.contradict("CAD", "$")).isFalse();
    assertThat(CurrencyName.contradict("USD", "CAD")).isTrue();
    assertThat(CurrencyName.contradict("$", "EUR")).isTrue();
    assertThat(CurrencyName.contradict("", "EUR")).isFalse();
    assertThat(CurrencyName.of("€")).isEqualTo("EUR");
    assertThat(CurrencyName.of("us$")).isEqualTo("USD");
    assertThat(CurrencyName.of("dollars")).isEmpty();
  }
}
