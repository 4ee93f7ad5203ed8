package org.wetmil.workbook.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.checks.Checks;
import org.wetmil.checks.Finding;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.Work;

/** Bids in German and Spanish trade words, from the headings to the last cell. */
class TradeWordsTest {
  /** Checks that speak of a word that is not understood, or understood in more than one way. */
  private static final List<String> OF_WORDS =
      List.of(
          "unknown-surface",
          "unknown-coating",
          "ambiguous-coating",
          "unknown-condition",
          "unknown-texture",
          "unknown-shape",
          "unknown-include",
          "unknown-back-roll",
          "heading-ambiguous",
          "heading-not-read");

  @TempDir Path folder;

  @Test
  void germanBidIsUnderstoodWordByWord() {
    FilledBid filled =
        filled(
            new Book()
                .sheet("Angebot")
                .row(
                    "Raum",
                    "Bauteil",
                    "Zustand",
                    "Länge (m)",
                    "Breite (m)",
                    "Höhe (m)",
                    "Anzahl",
                    "Beschichtung",
                    "Glanzgrad",
                    "Struktur",
                    "Bauart",
                    "Nachrollen",
                    "Enthalten")
                .row(
                    "Halle",
                    "Wände",
                    "gestrichen",
                    12,
                    8,
                    3,
                    null,
                    "Dispersionsfarbe",
                    "matt",
                    "Raufaser",
                    null,
                    "nie",
                    "ja")
                .row(
                    "Halle",
                    "Decke",
                    "Gipskarton",
                    12,
                    8,
                    3,
                    null,
                    "Grundierung",
                    null,
                    "glatt",
                    null,
                    "erste Lage",
                    null)
                .row(
                    "Halle",
                    "Tür",
                    "grundiert",
                    null,
                    null,
                    null,
                    3,
                    "Alkydharzlack",
                    "glänzend",
                    null,
                    "Füllung",
                    null,
                    "nein"));
    List<FilledLine> lines = understood(filled);

    assertThat(lines.get(0).base(FilledColumn.ROLL)).isZero();
    assertThat(lines.get(1).base(FilledColumn.ROLL)).isPositive();
    assertThat(lines.get(2).base(FilledColumn.COUNTED)).isZero();
  }

  @Test
  void spanishBidIsUnderstoodWordByWord() {
    FilledBid filled =
        filled(
            new Book()
                .sheet("Presupuesto")
                .row(
                    "Local",
                    "Elemento",
                    "Estado",
                    "Largo (m)",
                    "Ancho (m)",
                    "Altura (m)",
                    "Cantidad",
                    "Pintura",
                    "Acabado",
                    "Textura",
                    "Forma",
                    "Rodillo",
                    "Incluir")
                .row(
                    "Aula",
                    "paredes",
                    "pintado",
                    12,
                    8,
                    3,
                    null,
                    "pintura plástica",
                    "mate",
                    "gotelé",
                    null,
                    "nunca",
                    "sí")
                .row(
                    "Aula",
                    "techo",
                    "cartón yeso",
                    12,
                    8,
                    3,
                    null,
                    "imprimación",
                    null,
                    "liso",
                    null,
                    "primera mano",
                    null)
                .row(
                    "Aula",
                    "puertas",
                    "imprimada",
                    null,
                    null,
                    null,
                    3,
                    "esmalte sintético",
                    "brillante",
                    null,
                    "de tableros",
                    null,
                    "no"));
    List<FilledLine> lines = understood(filled);

    assertThat(lines.get(1).base(FilledColumn.ROLL)).isPositive();
  }

  /** The three lines that each language says in its own words. */
  private static List<FilledLine> understood(FilledBid filled) {
    List<FilledLine> lines = filled.lines().toList();
    assertThat(found(filled)).isEmpty();
    assertThat(lines)
        .extracting(line -> line.work().surface().name())
        .containsExactly("walls", "ceiling", "doors");
    assertThat(lines)
        .extracting(line -> line.work().coating().name())
        .containsExactly("latex", "primer", "oil-based");
    assertThat(lines)
        .extracting(line -> line.work().condition().name())
        .containsExactly("painted", "drywall", "primed");
    assertThat(lines.get(0).work().texture().name()).isEqualTo("textured");
    assertThat(lines)
        .extracting(FilledLine::work)
        .extracting(Work::isIncluded)
        .containsExactly(true, true, false);
    return lines;
  }

  @Test
  void sameRoomInTwoLanguagesTakesTheSamePaint() {
    FilledBid german =
        filled(
            new Book()
                .sheet("A")
                .row("Raum", "Bauteil", "Länge (m)", "Höhe (m)", "Beschichtung", "Zustand")
                .row("Halle", "Wände", "12,5", "2,7", "Dispersion", "Beton"));
    FilledBid english =
        filled(
            new Book()
                .sheet("A")
                .row("Room", "Surface", "Length (m)", "Height (m)", "Coating", "Condition")
                .row("Hall", "walls", 12.5, 2.7, "latex", "concrete"));

    for (FilledColumn column : List.of(FilledColumn.PAINT, FilledColumn.LABOUR)) {
      assertThat(german.total(column)).isCloseTo(english.total(column), within(1e-12));
    }
  }

  @Test
  void wordWithTwoMeaningsIsAskedAbout() {
    FilledBid filled =
        filled(
            new Book()
                .sheet("A")
                .row("Raum", "Bauteil", "Fläche (m²)", "Beschichtung")
                .row("Halle", "Wände", 30, "Lack")
                .row("Halle", "Decke", 30, "barniz"));

    assertThat(found(filled)).containsExactly("ambiguous-coating", "ambiguous-coating");
  }

  @Test
  void columnIsFoundByGermanNamesBelowAnUnknownHeading() {
    FilledBid filled =
        filled(
            new Book()
                .sheet("A")
                .row("Raum", "Was", "Länge (m)", "Höhe (m)", "Womit")
                .row("Halle", "Wände", 12, 3, "Dispersionsfarbe")
                .row("Halle", "Decke", 12, 3, "Grundierung"));

    assertThat(filled.lines().map(line -> line.work().surface().name()))
        .containsExactly("walls", "ceiling");
    assertThat(filled.bid().remarks())
        .extracting(remark -> remark.check())
        .containsExactly("heading-read-as", "heading-read-as");
  }

  @Test
  void ownTablesMayAnswerInGerman() {
    FilledBid filled =
        filled(
            new Book()
                .sheet("A")
                .row("Raum", "Bauteil", "Fläche (m²)", "Beschichtung")
                .row("Halle", "Wände", 30, "Hausweiss")
                .sheet("Coatings")
                .row("Coating", "Class", "Solvent borne")
                .row("Hausweiss", "latex", "ja"));

    assertThat(filled.bid().problems()).isEmpty();
    assertThat(
            filled.lines().findFirst().orElseThrow().work().coating().row().isYes("Solvent borne"))
        .isTrue();
  }

  private FilledBid filled(Book book) {
    return Estimator.fill(book.read(folder).bid());
  }

  private static List<String> found(FilledBid filled) {
    return Checks.run(filled).stream().map(Finding::check).filter(OF_WORDS::contains).toList();
  }
}
