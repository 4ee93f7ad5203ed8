package org.wetmil.hostile;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.opc.XmlIn;
import org.wetmil.workbook.stream.PackageReader;
import org.wetmil.workbook.stream.SheetPart;

/** What holds for every file, however broken: a result or a sentence, and never a stack trace. */
final class Promises {
  private static final Set<Integer> CODES = Set.of(0, 3);

  private Promises() {}

  /** The promises that what was printed and written does not keep. */
  static List<String> broken(
      Broken broken, int code, List<Path> written, List<String> err, String out) {
    List<String> problems = new ArrayList<>();
    String said = String.join("\n", err);
    String all = said + out;
    if (!CODES.contains(code) && !(code == 1 && broken.args().contains("--fail-on"))) {
      problems.add("code " + code + ": " + shortened(said));
    } else if (all.contains("Exception") || all.contains("fault of the program")) {
      problems.add("a fault is said: " + shortened(all));
    } else if (all.contains("more memory")) {
      problems.add("a file of this size needs more memory than there is");
    }
    if (all.contains(".wetmil-") || all.contains("\tat ")) {
      problems.add("what is not for the user is said: " + shortened(all));
    }
    if (code == 3 && err.isEmpty()) {
      problems.add("no sentence is said");
    }
    if (broken.args().get(0).equals("fill")) {
      // each file ends in a result or in one sentence of its own
      boolean refused = err.stream().anyMatch(line -> !line.contains(": passed over, "));
      if (written.size() + err.size() != broken.files() || (code == 3) != refused) {
        problems.add(
            "code %d, %d results and %d lines: %s"
                .formatted(code, written.size(), err.size(), shortened(said)));
      }
    } else if (code == 0 && written.isEmpty()) {
      problems.add("code 0, but no output");
    }
    for (String sentence : err) {
      if (!sentence.endsWith(".")) {
        problems.add("no sentence: " + shortened(sentence));
      } else if (sentence.length() > 1_000) {
        problems.add("a sentence of " + sentence.length() + " characters: " + shortened(sentence));
      }
    }
    written.forEach(result -> problems.addAll(brokenBy(result)));
    return problems;
  }

  /** What is wrong with a result: all of its sheets must be there to be read. */
  private static List<String> brokenBy(Path output) {
    List<String> problems = new ArrayList<>();
    try (PackageReader reader =
        PackageReader.open(output, new Passwords(List.of(Wholes.PASSWORD)))) {
      for (SheetPart sheet : reader.sheets()) {
        reader.sheetXml(sheet, XmlIn::end);
      }
      for (String part : reader.zip().names()) {
        try (InputStream in = reader.zip().bytes(part)) {
          in.transferTo(OutputStream.nullOutputStream());
        }
      }
    } catch (WorkbookException | IOException e) {
      problems.add("the result cannot be read: " + shortened(e.getMessage()));
    }
    return problems;
  }

  /** A sentence without what is of its own file alone. */
  static String kind(String sentence) {
    String bare = sentence.substring(sentence.indexOf(": ") + 2);
    String kind =
        bare.replaceAll("\"[^\"]*\"", "\"...\"")
            .replaceAll("\\((?:[^()]|\\([^()]*\\))*\\)", "(...)")
            .replaceAll("damaged at .*? \\(", "damaged at ... (")
            .replaceAll("\\d+", "#");
    return "    " + shortened(kind);
  }

  private static String shortened(String text) {
    String line = text.replace('\n', '|');
    return line.length() > 300 ? line.substring(0, 300) : line;
  }
}
