package org.wetmil.workbook.fill;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openxmlformats.schemas.drawingml.x2006.chart.ChartSpaceDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CommentsDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.SstDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.StyleSheetDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorkbookDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorksheetDocument;
import org.wetmil.jobs.FillJob;

/** The parts of a filled workbook against the schema: other programs forgive what Excel repairs. */
class SchemaTest {
  /** Every program writes it, the standard's own examples too; the schema does not know it. */
  private static final String SPACE = "space@http://www.w3.org/XML/1998/namespace";

  @TempDir Path folder;

  @Test
  void everyPartOfFilledSampleFollowsTheSchema() throws IOException, XmlException {
    Path filled = folder.resolve("filled.xlsx");
    Path customer = folder.resolve("customer.xlsx");
    new FillJob(LocalDate.of(2026, 1, 5), "test", false)
        .fill(Path.of("sample-workbooks", "clinic-refit.xlsx"), filled, customer);

    List<String> validated = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    for (Path workbook : List.of(filled, customer)) {
      validate(workbook, validated, faults);
    }

    assertThat(faults).isEmpty();
    assertThat(validated).contains("xl/workbook.xml", "xl/styles.xml", "xl/charts/chart1.xml");
    assertThat(validated).filteredOn(part -> part.contains("worksheets")).hasSize(15);
  }

  @Test
  void everyPartOfOtherSamplesFollowsTheSchema() throws IOException, XmlException {
    List<String> validated = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    for (String sample : List.of("spring-month-reconciled.xlsx", "past-bids-audited.xlsx")) {
      validate(Path.of("sample-workbooks", sample), validated, faults);
    }
    validate(Path.of("templates", "bid-us.xlsx"), validated, faults);

    assertThat(faults).isEmpty();
    assertThat(validated).contains("xl/charts/chart1.xml", "xl/worksheets/sheet8.xml");
  }

  private static void validate(Path workbook, List<String> validated, List<String> faults)
      throws IOException, XmlException {
    try (ZipFile zip = new ZipFile(workbook.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        try (InputStream in = zip.getInputStream(entry)) {
          XmlObject part = parse(entry.getName(), in);
          if (part != null) {
            validated.add(entry.getName());
            List<Object> errors = new ArrayList<>();
            part.validate(new XmlOptions().setErrorListener(asErrors(errors)));
            errors.stream()
                .map(error -> entry.getName() + ": " + error)
                .filter(fault -> !fault.contains(SPACE))
                .forEach(faults::add);
          }
        }
      }
    }
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static Collection<org.apache.xmlbeans.XmlError> asErrors(List<Object> errors) {
    return (Collection) errors;
  }

  private static XmlObject parse(String name, InputStream in) throws IOException, XmlException {
    if (name.startsWith("xl/worksheets/sheet")) {
      return WorksheetDocument.Factory.parse(in);
    }
    if (name.startsWith("xl/charts/chart")) {
      return ChartSpaceDocument.Factory.parse(in);
    }
    if (name.startsWith("xl/comments")) {
      return CommentsDocument.Factory.parse(in);
    }
    return switch (name) {
      case "xl/workbook.xml" -> WorkbookDocument.Factory.parse(in);
      case "xl/styles.xml" -> StyleSheetDocument.Factory.parse(in);
      case "xl/sharedStrings.xml" -> SstDocument.Factory.parse(in);
      default -> null;
    };
  }
}
