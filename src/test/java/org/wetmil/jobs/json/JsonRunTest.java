package org.wetmil.jobs.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.jobs.FillJob;
import org.wetmil.jobs.FillListener;
import org.wetmil.jobs.FillReport;
import org.wetmil.jobs.FillRun;
import org.wetmil.jobs.Inputs;
import org.wetmil.jobs.Outputs;
import org.wetmil.workbook.WorkbookException;

class JsonRunTest {
  private static final LocalDate DATE = LocalDate.of(2026, 1, 5);
  private static final Path SAMPLES = Path.of("sample-workbooks");
  private static final JsonSchema SCHEMA =
      JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(schemaText());

  /** What a run on all samples, and on a file that is no workbook, reported. */
  private static final Reports REPORTS = new Reports();

  @TempDir static Path shared;
  private static Inputs inputs;
  private static Path document;

  @TempDir Path folder;

  /** Keeps the reports of a run. */
  private static final class Reports implements FillListener {
    private final List<FillReport> filled = new ArrayList<>();

    @Override
    public void filled(FillReport report) {
      filled.add(report);
    }

    @Override
    public void refused(Path input, String sentence) {}

    @Override
    public void fault(Path input, Throwable fault) {}
  }

  @BeforeAll
  static void runOnTheSamples() throws IOException {
    Path broken = Files.writeString(shared.resolve("broken.xlsx"), "no workbook");
    inputs = Inputs.of(List.of(SAMPLES, broken));
    document = run("run.json", REPORTS);
  }

  @Test
  void documentOfTheSamplesFollowsTheSchema() throws IOException {
    JsonNode root = new ObjectMapper().readTree(document.toFile());
    assertThat(root.get("workbooks").size()).isEqualTo(inputs.files().size());
    assertThat(root.get("passedOver").size()).isEqualTo(inputs.passedOver().size());
    assertThat(against(document)).isEmpty();
  }

  @Test
  void schemaRefusesWhatIsNotOfIt() throws IOException {
    String text = Files.readString(document);

    assertThat(against(text.replace("\"netArea\"", "\"areaNet\""))).isNotEmpty();
    assertThat(against(text.replace("\"severity\" : \"warning\"", "\"severity\" : \"bad\"")))
        .isNotEmpty();
    assertThat(against(text.replace("\"2026-01-05\"", "\"5 January\""))).isNotEmpty();
  }

  @Test
  void schemaNamesEveryFilledColumn() throws IOException {
    JsonNode schema = new ObjectMapper().readTree(schemaText());
    JsonNode names = schema.at("/$defs/figures/propertyNames/enum");

    assertThat(StreamSupport.stream(names.spliterator(), false).map(JsonNode::asText))
        .containsExactlyElementsOf(
            Arrays.stream(FilledColumn.values())
                .filter(column -> column != FilledColumn.FINDINGS)
                .map(JsonWorkbook::key)
                .toList());
  }

  @Test
  void everyFigureAndFindingIsThereUnrounded() throws IOException {
    int clinic = inputs.files().indexOf(SAMPLES.resolve("clinic-refit.xlsx"));
    JsonNode book = new ObjectMapper().readTree(document.toFile()).at("/workbooks/" + clinic);
    FillReport report =
        REPORTS.filled.stream()
            .filter(each -> each.input().equals(inputs.files().get(clinic)))
            .findFirst()
            .orElseThrow();

    assertThat(book.at("/totals/paint/value").doubleValue()).isEqualTo(report.paint());
    assertThat(book.get("findings")).hasSize(report.located().size());
    assertThat(book.get("lines")).hasSize(report.rows());
    var lines = report.bid().lines().toList();
    for (int i = 0; i < lines.size(); i++) {
      JsonNode figures = book.at("/lines/" + i + "/figures");
      for (FilledColumn column : FilledColumn.values()) {
        var figure = lines.get(i).figures().get(column);
        boolean number = figure != null && column.quantity().isNumber();
        if (number && Double.isFinite(figure.number())) {
          assertThat(figures.at("/" + JsonWorkbook.key(column) + "/value").doubleValue())
              .isEqualTo(figure.number());
        } else if (number) {
          assertThat(figures.has(JsonWorkbook.key(column))).isFalse();
        }
      }
    }
    assertThat(book.at("/lines/0/figures/tipCode/value").asText()).isEqualTo("517");
    assertThat(Files.readString(document)).doesNotContain("NaN").doesNotContain("Infinity");
  }

  @Test
  void sameRunGivesTheSameDocument() throws IOException {
    assertThat(run("again.json", new Reports())).hasSameBinaryContentAs(document);
  }

  @Test
  void faultOfTheProgramIsTold() throws IOException {
    Path json = folder.resolve("run.json");
    try (JsonRun run = begin(json, Inputs.of(List.of(SAMPLES)), false)) {
      run.fault(Path.of("bid.xlsx"), new IllegalStateException("odd"));
      run.finish();
    }

    assertThat(against(json)).isEmpty();
    assertThat(Files.readString(json)).contains("bid.xlsx").contains("a fault of the program");
  }

  @Test
  void documentThatIsNotFinishedIsNotThere() {
    Path json = folder.resolve("run.json");
    try (JsonRun run = begin(json, Inputs.of(List.of(SAMPLES)), false)) {
      run.refused(Path.of("bid.xlsx"), "no.");
    }

    assertThat(folder).isEmptyDirectory();
  }

  /** A date that is not there stands for whatever may go wrong while the head is written. */
  @Test
  void documentWhoseHeadCannotBeWrittenIsNotThere() {
    Path json = folder.resolve("run.json");

    assertThatThrownBy(() -> JsonRun.begin(json, Inputs.of(List.of(SAMPLES)), "test", null, false))
        .isInstanceOf(NullPointerException.class);

    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void neverWritesOverAnOlderFileUnaskedNorOverAnInputEver() throws IOException {
    Path older = Files.writeString(folder.resolve("older.json"), "older");
    Inputs itself = Inputs.of(List.of(older));

    assertThatThrownBy(() -> begin(older, Inputs.of(List.of(SAMPLES)), false))
        .isInstanceOf(WorkbookException.Unwritable.class)
        .hasMessageContaining("already");
    assertThatThrownBy(() -> begin(older, itself, true)).hasMessageContaining("the input itself");
    assertThatThrownBy(() -> begin(folder.resolve("bid.xlsx"), itself, true))
        .hasMessageContaining("ends in .json");
    assertThat(older).hasContent("older");
  }

  private static Path run(String name, FillListener other) {
    Path json = shared.resolve(name);
    Outputs outputs = new Outputs(shared, inputs);
    try (JsonRun run = begin(json, inputs, false)) {
      new FillRun(new FillJob(DATE, "test", true)::fill, List.of(other, run)).fill(inputs, outputs);
      run.finish();
    }
    return json;
  }

  private static JsonRun begin(Path json, Inputs inputs, boolean overwrite) {
    return JsonRun.begin(json, inputs, "test", DATE, overwrite);
  }

  private static Set<ValidationMessage> against(Path json) throws IOException {
    return against(Files.readString(json));
  }

  private static Set<ValidationMessage> against(String json) {
    return SCHEMA.validate(
        json,
        InputFormat.JSON,
        context -> context.getExecutionConfig().setFormatAssertionsEnabled(true));
  }

  private static String schemaText() {
    try (InputStream in = JsonRun.class.getResourceAsStream("fill-run.schema.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
