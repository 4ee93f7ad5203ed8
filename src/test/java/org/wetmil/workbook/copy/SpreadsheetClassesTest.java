package org.wetmil.workbook.copy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.BrokenBarrierException;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** Several threads use the library from the start; none may wait for another for ever. */
class SpreadsheetClassesTest {

  /** Runs in a JVM of its own, where no class is set up. */
  static final class FromAllSides {
    private static final List<String> CLASSES =
        List.of(
            "org.apache.xmlbeans.XmlObject",
            "org.apache.xmlbeans.XmlBeans",
            "org.apache.xmlbeans.XmlString",
            "org.apache.xmlbeans.impl.schema.BuiltinSchemaTypeSystem",
            "org.apache.xmlbeans.impl.schema.SchemaTypeSystemImpl",
            "org.apache.xmlbeans.impl.schema.SchemaTypeImpl",
            "org.apache.xmlbeans.metadata.system.sXMLSCHEMA.TypeSystemHolder",
            "org.apache.poi.schemas.ooxml.system.ooxml.TypeSystemHolder",
            "org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorkbook",
            "org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellType",
            "org.openxmlformats.schemas.drawingml.x2006.chart.STAxPos",
            "com.microsoft.schemas.vml.STStrokeJoinStyle");

    public static void main(String[] args) {
      SpreadsheetClasses.load();
      CyclicBarrier together = new CyclicBarrier(CLASSES.size());
      for (String first : CLASSES) {
        new Thread(() -> setUp(first, together)).start();
      }
    }

    private static void setUp(String first, CyclicBarrier together) {
      try {
        together.await();
        Class.forName(first);
      } catch (ClassNotFoundException | InterruptedException | BrokenBarrierException e) {
        throw new IllegalStateException(e);
      }
    }
  }

  @Test
  void threadsThatComeToTheLibraryFromAllSidesEnd() throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-cp",
                    System.getProperty("java.class.path"),
                    FromAllSides.class.getName()))
            .inheritIO()
            .start();
    try {
      assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
      assertThat(process.exitValue()).isZero();
    } finally {
      process.destroyForcibly();
    }
  }
}
