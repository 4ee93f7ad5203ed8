package org.wetmil.zip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.SmallBid;

/** The launcher of Unix systems, unpacked from the zip into a path with a space. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "bin/wetmil is a script for Unix shells")
class LauncherIT {
  private static final long PATIENCE_S = 120;
  private static final String JAVA_HOME = System.getProperty("java.home");

  @TempDir static Path unpacked;
  private static Path launcher;

  @TempDir Path folder;

  @BeforeAll
  static void unpack() throws IOException {
    Path here = unpacked.resolve("my tools");
    try (InputStream file = Files.newInputStream(Path.of(System.getProperty("wetmil.zip")));
        ZipInputStream zip = new ZipInputStream(file)) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        Path target = here.resolve(entry.getName());
        if (entry.isDirectory()) {
          Files.createDirectories(target);
        } else {
          Files.copy(zip, target);
        }
      }
    }
    try (Stream<Path> tops = Files.list(here)) {
      launcher = tops.findFirst().orElseThrow().resolve("bin/wetmil");
    }
    assertThat(launcher.toFile().setExecutable(true)).isTrue();
  }

  @Test
  void aFolderDroppedOnItIsFilledWhateverTheLocaleAndTheNames() throws Exception {
    Path bids = folder.resolve("großer Auftrag");
    Files.createDirectory(bids);
    SmallBid.write(bids.resolve("日本 & 100 %.xlsx"));

    Started first = start(Map.of("JAVA_HOME", JAVA_HOME, "LC_ALL", "C"), bids.toString());
    Started again = start(Map.of("JAVA_HOME", JAVA_HOME, "LC_ALL", "C"), bids.toString());

    assertThat(first.err()).isEmpty();
    assertThat(first.code()).isZero();
    assertThat(again.out()).last().asString().contains("日本 & 100 %-filled-2.xlsx: ");
    try (Stream<Path> files = Files.list(bids)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .contains("日本 & 100 %-filled.xlsx", "日本 & 100 %-filled-2.xlsx");
    }
  }

  @Test
  void theExitCodeIsThatOfTheProgram() throws Exception {
    assertThat(start(Map.of("JAVA_HOME", JAVA_HOME), "fill").code()).isEqualTo(2);
  }

  @Test
  void itIsFoundThroughALink() throws Exception {
    Path link = Files.createSymbolicLink(folder.resolve("wm"), launcher);

    Started run = run(List.of(link.toString(), "--version"), Map.of("JAVA_HOME", JAVA_HOME));
    Files.delete(link);

    assertThat(run.out()).singleElement().asString().startsWith("wetmil ");
  }

  @Test
  void aMachineWithoutJavaIsToldWhatToInstall() throws Exception {
    assumeNoListOfJavas();
    Started run = start(Map.of("PATH", pathWithoutJava(), "JAVA_HOME", ""), "--version");

    assertThat(run.err())
        .containsExactly(
            "Wetmil needs Java 17 or later, and this machine has none."
                + " Install OpenJDK 17 or later and start Wetmil again.");
    assertThat(run.code()).isEqualTo(4);
  }

  @Test
  void aJavaThatIsTooOldIsNamed() throws Exception {
    assumeNoListOfJavas();
    Path old = oldJava("1.8.0_402");
    Started run =
        start(Map.of("PATH", pathWithoutJava(), "JAVA_HOME", old.toString()), "--version");

    assertThat(run.err())
        .containsExactly(
            "Wetmil needs Java 17 or later, and this machine has Java 8 ("
                + old
                + "/bin/java). Install OpenJDK 17 or later and start Wetmil again.");
    assertThat(run.code()).isEqualTo(4);
  }

  @Test
  void anOldJavaDoesNotHideANewOneOnThePath() throws Exception {
    String path = JAVA_HOME + "/bin:" + pathWithoutJava();

    Started run =
        start(Map.of("PATH", path, "JAVA_HOME", oldJava("11.0.2").toString()), "--version");

    assertThat(run.out()).singleElement().asString().startsWith("wetmil ");
  }

  @Test
  void completionKnowsTheCommandsInBash() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "bash is not here");
    Path script = launcher.resolveSibling("../completion/wetmil-completion.sh").normalize();

    Started run =
        run(
            List.of(
                "/bin/bash",
                "-c",
                "source \"$0\"; COMP_WORDS=(wetmil re); COMP_CWORD=1; _complete_wetmil;"
                    + " echo \"${COMPREPLY[@]}\"",
                script.toString()),
            Map.of());

    assertThat(run.out()).containsExactly("reconcile");
  }

  /** The tools that a shell script leans on, and no Java. */
  private String pathWithoutJava() throws IOException {
    Path tools = Files.createDirectories(folder.resolve("tools"));
    for (String tool : List.of("dirname", "readlink", "sed", "head", "locale")) {
      Path real = Path.of(Files.exists(Path.of("/usr/bin", tool)) ? "/usr/bin" : "/bin", tool);
      script(tools.resolve(tool), "exec " + real + " \"$@\"");
    }
    return tools.toString();
  }

  private Path oldJava(String version) throws IOException {
    Path home = folder.resolve("old");
    script(Files.createDirectories(home.resolve("bin")).resolve("java"), "exit 1");
    Files.writeString(home.resolve("release"), "JAVA_VERSION=\"" + version + "\"\n");
    return home.toRealPath();
  }

  private static void script(Path file, String line) throws IOException {
    Files.writeString(file, "#!/bin/sh\n" + line + "\n");
    assertThat(file.toFile().setExecutable(true)).isTrue();
  }

  /** A Mac keeps a list of its own, which no setting hides. */
  private static void assumeNoListOfJavas() {
    assumeFalse(Files.exists(Path.of("/usr/libexec/java_home")), "a Mac's own list finds Java");
  }

  private record Started(int code, List<String> out, List<String> err) {}

  private Started start(Map<String, String> environment, String... args) throws Exception {
    List<String> command = new ArrayList<>(List.of("/bin/sh", launcher.toString()));
    command.addAll(List.of(args));
    return run(command, environment);
  }

  private Started run(List<String> command, Map<String, String> environment) throws Exception {
    Path out = folder.resolve("out.txt");
    Path err = folder.resolve("err.txt");
    ProcessBuilder builder =
        new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
    builder.environment().remove("LC_ALL");
    builder.environment().putAll(environment);
    Process process = builder.start();
    process.getOutputStream().close();
    assertThat(process.waitFor(PATIENCE_S, TimeUnit.SECONDS)).isTrue();
    return new Started(
        process.exitValue(),
        Files.readAllLines(out, StandardCharsets.UTF_8),
        Files.readAllLines(err, StandardCharsets.UTF_8));
  }
}
