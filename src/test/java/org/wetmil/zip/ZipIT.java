package org.wetmil.zip;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.junit.jupiter.api.Test;

/** What the zip for the users of Wetmil holds. */
class ZipIT {

  @Test
  void everythingThatAUserNeedsIsInside() throws IOException {
    try (ZipFile zip = open()) {
      List<String> names =
          Collections.list(zip.getEntries()).stream()
              .map(ZipArchiveEntry::getName)
              .map(name -> name.substring(name.indexOf('/') + 1))
              .toList();

      assertThat(names)
          .contains(
              "bin/wetmil",
              "bin/wetmil.cmd",
              "lib/wetmil.jar",
              "quick-guide.html",
              "LICENSE",
              "licences/THIRD-PARTY.txt",
              "licences/curvesapi.txt",
              "licences/jline.txt",
              "licences/progressbar.txt",
              "completion/wetmil-completion.sh",
              "templates/bid-us.xlsx",
              "templates/purchases.csv",
              "sample-workbooks/clinic-refit.xlsx")
          .allMatch(name -> !name.startsWith("~$"));
    }
  }

  @Test
  void theGuideNamesNoFileThatIsNotThere() throws IOException {
    try (ZipFile zip = open()) {
      String guide = text(zip, "quick-guide.html");
      List<String> named =
          Pattern.compile("(?:templates|sample-workbooks)/[\\w./-]+|\\w+\\.md|LICENSE")
              .matcher(guide)
              .results()
              .map(MatchResult::group)
              .toList();

      assertThat(named).hasSizeGreaterThan(6).contains("templates/purchases.csv");
      assertThat(named)
          .allSatisfy(
              name ->
                  assertThat(Collections.list(zip.getEntries()))
                      .extracting(ZipArchiveEntry::getName)
                      .anyMatch(entry -> entry.contains("/" + name)));
      assertThat(guide).doesNotContain("mvn", "src=", "href=");
    }
  }

  @Test
  void theLaunchersAreAsTheirSystemsWantThem() throws IOException {
    try (ZipFile zip = open()) {
      assertThat(entry(zip, "bin/wetmil").getUnixMode() & 0111).isEqualTo(0111);
      assertThat(text(zip, "bin/wetmil")).startsWith("#!/bin/sh\n").doesNotContain("\r");
      assertThat(text(zip, "bin/wetmil.cmd").split("\r\n")).noneMatch(line -> line.contains("\n"));
    }
  }

  @Test
  void bothLaunchersStartJavaWithTheSameFlags() throws IOException {
    try (ZipFile zip = open()) {
      String flags = between(text(zip, "bin/wetmil"), "\nflags='", "'");

      assertThat(flags).startsWith("-X");
      assertThat(between(text(zip, "bin/wetmil.cmd"), "\"FLAGS=", "\"")).isEqualTo(flags);
    }
  }

  @Test
  void theNoticesNameEveryLibraryWithItsLicence() throws IOException {
    try (ZipFile zip = open()) {
      assertThat(text(zip, "licences/THIRD-PARTY.txt"))
          .contains("org.apache.poi:poi-ooxml ", "info.picocli:picocli ", "curvesapi", "BSD")
          .doesNotContain("junit", "archunit", "Unknown license");
    }
  }

  @Test
  void noTimeOfTheBuildIsInIt() throws IOException {
    try (ZipFile zip = open()) {
      assertThat(Collections.list(zip.getEntries()))
          .extracting(ZipArchiveEntry::getTime)
          .containsOnly(entry(zip, "LICENSE").getTime());
      assertThat(entry(zip, "LICENSE").getLastModifiedTime().toString()).startsWith("2025-01-01");
    }
  }

  private static ZipFile open() throws IOException {
    return ZipFile.builder().setPath(Path.of(System.getProperty("wetmil.zip"))).get();
  }

  private static ZipArchiveEntry entry(ZipFile zip, String name) {
    return Collections.list(zip.getEntries()).stream()
        .filter(entry -> entry.getName().endsWith("/" + name))
        .findFirst()
        .orElseThrow();
  }

  private static String text(ZipFile zip, String name) throws IOException {
    try (var in = zip.getInputStream(entry(zip, name))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static String between(String text, String start, String end) {
    int from = text.indexOf(start) + start.length();
    return text.substring(from, text.indexOf(end, from));
  }
}
