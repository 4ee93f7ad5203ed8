package org.wetmil.jobs.json;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import org.wetmil.jobs.FillListener;
import org.wetmil.jobs.FillReport;
import org.wetmil.jobs.Inputs;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.copy.OutputFile;

/**
 * One JSON document for a run, written as the workbooks come: no more than one of them is held. The
 * file is there whole after {@link #finish} or not at all.
 */
public final class JsonRun implements FillListener, Closeable {
  private static final int FORMAT_VERSION = 2;

  private final OutputFile files;
  private final Path temporary;
  private final JsonGenerator out;

  private JsonRun(OutputFile files) throws IOException {
    this.files = files;
    temporary = files.temporary();
    out = new JsonFactory().createGenerator(files.open(temporary), JsonEncoding.UTF8);
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    out.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(lines));
  }

  /**
   * Begins a document.
   *
   * @param file ends in .json, so that no workbook is taken for it
   * @param overwrite whether a file that is there already may be replaced
   * @throws WorkbookException when it may not be written
   */
  public static JsonRun begin(
      Path file, Inputs inputs, String version, LocalDate date, boolean overwrite) {
    if (!file.toString().toLowerCase(Locale.ROOT).endsWith(".json")) {
      throw new WorkbookException.Unwritable(file, "name a file that ends in .json.", null);
    }
    OutputFile files = OutputFile.claim(inputs.files(), file, overwrite);
    Closeable begun = files;
    try {
      JsonRun run = new JsonRun(files);
      begun = run;
      run.head(inputs, version, date);
      return run;
    } catch (IOException e) {
      abandon(begun, e);
      throw new UncheckedIOException(e);
    } catch (RuntimeException | Error e) {
      abandon(begun, e);
      throw e;
    }
  }

  /** Leaves no file behind; nobody else will close what was not begun. */
  private static void abandon(Closeable begun, Throwable why) {
    try {
      begun.close();
    } catch (IOException | RuntimeException e) {
      why.addSuppressed(e);
    }
  }

  private void head(Inputs inputs, String version, LocalDate date) throws IOException {
    out.writeStartObject();
    out.writeStringField("format", "wetmil fill");
    out.writeNumberField("formatVersion", FORMAT_VERSION);
    out.writeStringField("version", version);
    out.writeStringField("date", date.toString());
    out.writeArrayFieldStart("passedOver");
    for (Inputs.PassedOver passed : inputs.passedOver()) {
      out.writeStartObject();
      out.writeStringField("file", passed.file().toString());
      out.writeStringField("why", passed.why());
      out.writeEndObject();
    }
    out.writeEndArray();
    out.writeArrayFieldStart("workbooks");
  }

  @Override
  public void filled(FillReport report) {
    try {
      new JsonWorkbook(out).write(report);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void refused(Path input, String sentence) {
    error(input, sentence);
  }

  @Override
  public void fault(Path input, Throwable fault) {
    error(input, "a fault of the program, not of the workbook (" + fault + ")");
  }

  private void error(Path input, String sentence) {
    try {
      out.writeStartObject();
      out.writeStringField("input", input.toString());
      out.writeStringField("error", sentence);
      out.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Ends the document and puts it in place. */
  public void finish() {
    try {
      out.writeEndArray();
      out.writeEndObject();
      out.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    files.publish(temporary);
  }

  @Override
  public void close() {
    try (files) {
      out.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
