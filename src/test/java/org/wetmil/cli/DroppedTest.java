package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DroppedTest {
  private static final String CMD = "C:\\Windows\\system32\\cmd.exe /c ";

  @TempDir Path folder;

  @Test
  void aFileThatIsThereIsFilledUnderTheNextNumber() throws IOException {
    String bid = Files.createFile(folder.resolve("bid.xlsx")).toString();

    assertThat(meant(null, bid, "other.xlsx"))
        .containsExactly("fill", "--number", bid, "other.xlsx");
    assertThat(meant(null, folder.toString()))
        .containsExactly("fill", "--number", folder.toString());
  }

  @Test
  void commandsOptionsAndNothingStayAsTheyAre() {
    assertThat(meant(null, "fill", folder.toString())).containsExactly("fill", folder.toString());
    assertThat(meant(null, "--help")).containsExactly("--help");
    assertThat(meant(null, "not-there.xlsx")).containsExactly("not-there.xlsx");
    assertThat(meant(null, "no\0name")).containsExactly("no\0name");
    assertThat(meant(null)).isEmpty();
  }

  @Test
  void theLineOfWindowsGivesNamesWithSpacesAndSignsWhole() {
    String line = CMD + "\"\"C:\\my tools\\wetmil.cmd\" C:\\a&b.xlsx \"C:\\Čeněk 100 %.xlsx\"\"";

    assertThat(meant(line, "C:\\a")).containsExactly("C:\\a&b.xlsx", "C:\\Čeněk 100 %.xlsx");
  }

  @Test
  void theLineOfWindowsMayBeQuotedOnceOrEndWithASpace() {
    assertThat(meant(CMD + "\"C:\\wetmil.cmd\" \"C:\\a b.xlsx\"")).containsExactly("C:\\a b.xlsx");
    assertThat(meant(CMD + "\"\"C:\\wetmil.cmd\" C:\\a.xlsx \"")).containsExactly("C:\\a.xlsx");
    assertThat(meant(CMD + "\"\"C:\\wetmil.cmd\" \"")).isEmpty();
  }

  private static String[] meant(String windowsLine, String... args) {
    return Dropped.meant(WetmilCommand.commandLine(), args, windowsLine);
  }
}
