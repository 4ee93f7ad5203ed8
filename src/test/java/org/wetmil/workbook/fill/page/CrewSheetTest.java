package org.wetmil.workbook.fill.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.LENGTH;
import static org.wetmil.estimate.InputColumn.ROOM;
import static org.wetmil.estimate.InputColumn.SURFACE;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.Estimator;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.copy.LeanWorkbook;
import org.wetmil.workbook.copy.NewWorkbook;
import org.wetmil.workbook.look.Look;

class CrewSheetTest {
  private static final Pattern PLACE = Pattern.compile("\\{\\d}");

  static List<String> languages() {
    return Catalogue.builtIn().range(Setting.CREW_LANGUAGE).words();
  }

  /** A language is a file of its name, with the words and places of the English one. */
  @ParameterizedTest
  @MethodSource("languages")
  void everyLanguageOfTheSettingHasAllItsWords(String language) throws IOException {
    Properties english = words("English");
    Properties words = words(language);

    assertThat(words.stringPropertyNames()).isEqualTo(english.stringPropertyNames());
    for (String key : words.stringPropertyNames()) {
      assertThat(places(words.getProperty(key)))
          .as(key)
          .containsExactlyInAnyOrderElementsOf(places(english.getProperty(key)));
    }
  }

  @Test
  void spanishPagesAreSpanish() throws IOException {
    List<String> texts = texts(Bids.settings("Crew language", "Spanish"), lines(1));

    assertThat(texts).contains("Boquilla", "Ritmo: s por 10 ft").doesNotContain("Tip");
  }

  @Test
  void surfacesAndCoatingsAreSaidInTheLanguageOfTheCrewOrAsTyped() throws IOException {
    Catalogue spanish = Bids.settings("Crew language", "Spanish");

    assertThat(texts(spanish, line("Walls", "latex"), line("lap siding", "heavy latex")))
        .contains("paredes", "pintura látex", "lap siding", "heavy latex");
    assertThat(texts(spanish, line("cielo raso", "emulsión"), line("crown moulding", "oil")))
        .contains("cielo raso", "pintura látex", "molduras (crown moulding)", "pintura de aceite");
    assertThat(texts(spanish, line("Decke", "latex"), line("gold leaf", "latex")))
        .contains("techo (Decke)", "gold leaf");
    assertThat(texts(Catalogue.builtIn(), line("techo", "látex interior"), line("clg", "latex")))
        .contains("ceiling (techo)", "latex", "clg");
  }

  private static BidLine line(String surface, String coating) {
    return Bids.line(ROOM, "Hall", SURFACE, surface, COATING, coating, AREA, 500);
  }

  @Test
  void figuresStandAloneAndTheirUnitsInTheHeadings() throws IOException {
    assertThat(texts(Catalogue.builtIn(), lines(1)))
        .contains("Pressure at pump, psi", "2000", "Wet gauge, mil", "4.5", "517");
  }

  @Test
  void aLineThatIsNotFilledNamesNoTip() throws IOException {
    BidLine noGirth = Bids.line(ROOM, "Hall", SURFACE, "pipes", COATING, "latex", LENGTH, 90);
    BidLine noWidth = Bids.line(ROOM, "Hall", SURFACE, "ceiling", COATING, "latex", LENGTH, 10);

    assertThat(texts(Catalogue.builtIn(), noGirth, noWidth))
        .containsSubsequence(
            "pipes",
            "latex",
            "not computed: ask the office",
            "ceiling",
            "latex",
            "not computed: ask the office")
        .noneMatch(text -> text.matches("\\d{3}"));
    assertThat(texts(Catalogue.builtIn(), lines(1))).anyMatch(text -> text.matches("\\d{3}"));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 6, 8})
  void roomOfUpToEightLinesIsOnePage(int lines) throws IOException {
    assertThat(texts(Catalogue.builtIn(), lines(lines)))
        .filteredOn(isTitle())
        .containsExactly("Hall");
  }

  @Test
  void longerRoomIsPartedEvenly() throws IOException {
    assertThat(texts(Catalogue.builtIn(), lines(11)))
        .filteredOn(text -> isTitle().test(text) || text.equals("walls"))
        .containsExactlyElementsOf(
            Stream.of(
                    List.of("Hall, page 1 of 2"),
                    List.of("walls", "walls", "walls", "walls", "walls"),
                    List.of("Hall, page 2 of 2"),
                    List.of("walls", "walls", "walls", "walls", "walls", "walls"))
                .flatMap(List::stream)
                .toList());
  }

  @Test
  void eachPageHasItsDrawing() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      XSSFSheet sheet = written(workbook, Catalogue.builtIn(), lines(11));
      // gun, fan, work, arrow and label; three passes, two laps, three arrows and their label
      assertThat(sheet.getDrawingPatriarch().getShapes()).hasSize(2 * (5 + 9));
    }
  }

  @Test
  void aDrawingThatIsCopiedIsWhatTheLibraryDraws(@TempDir Path folder) throws IOException {
    assertThat(drawing(new LeanWorkbook(), folder.resolve("copied.xlsx")))
        .isEqualTo(drawing(new XSSFWorkbook(), folder.resolve("drawn.xlsx")))
        .contains("id=\"42\"");
  }

  /** The drawing of three pages, as it stands in the file. */
  private static String drawing(XSSFWorkbook workbook, Path file) throws IOException {
    try (workbook) {
      written(workbook, Catalogue.builtIn(), lines(20));
      NewWorkbook.write(workbook, file, false);
    }
    try (ZipFile zip = new ZipFile(file.toFile());
        InputStream in = zip.getInputStream(zip.getEntry("xl/drawings/drawing1.xml"))) {
      // how large a shape is stands there twice; here the library looks at the rows that it holds
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .replaceAll("<a:xfrm>.*?</a:xfrm>", "");
    }
  }

  private static Predicate<String> isTitle() {
    return text -> text.startsWith("Hall");
  }

  private static BidLine[] lines(int n) {
    return Stream.generate(
            () -> Bids.line(ROOM, "Hall", SURFACE, "walls", COATING, "latex", AREA, 500))
        .limit(n)
        .toArray(BidLine[]::new);
  }

  private static List<String> texts(Catalogue catalogue, BidLine... lines) throws IOException {
    List<String> texts = new ArrayList<>();
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      for (Row row : written(workbook, catalogue, lines)) {
        for (Cell cell : row) {
          if (cell.getCellType() == CellType.STRING) {
            texts.add(cell.getStringCellValue());
          }
        }
      }
    }
    return texts;
  }

  private static XSSFSheet written(XSSFWorkbook workbook, Catalogue catalogue, BidLine... lines) {
    XSSFSheet sheet = workbook.createSheet("Crew");
    new CrewSheet(
            sheet, new Look(workbook), Estimator.fill(Bids.bid(catalogue, UnitSystem.US, lines)))
        .write(new ChangedSince("Summary!$I$20", 12.5));
    return sheet;
  }

  private static Properties words(String language) throws IOException {
    Properties words = new Properties();
    String file = "wording_" + language.toLowerCase(Locale.ROOT) + ".properties";
    try (InputStream in = Wording.class.getResourceAsStream(file)) {
      assertThat(in).as(file).isNotNull();
      words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    }
    return words;
  }

  private static List<String> places(String text) {
    Matcher matcher = PLACE.matcher(text);
    List<String> places = new ArrayList<>();
    while (matcher.find()) {
      places.add(matcher.group());
    }
    return places;
  }
}
