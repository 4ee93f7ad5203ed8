package org.wetmil.workbook.recalc;

import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * Does with a workbook in LibreOffice what a person would do there, by a macro in LibreOffice's own
 * Basic, which has the workbook as {@code doc}.
 */
final class Macro {
  private static final String LIBRARY =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <!DOCTYPE library:library PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "library.dtd">
      <library:library xmlns:library="http://openoffice.org/2000/library" library:name="Standard"
          library:readonly="false" library:passwordprotected="false">
        <library:element library:name="Hand"/>
      </library:library>
      """;

  private static final String MODULE =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <!DOCTYPE script:module PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "module.dtd">
      <script:module xmlns:script="http://openoffice.org/2000/script" script:name="Hand"
          script:language="StarBasic">
      Sub Run(source As String, target As String, secret As String)
        Dim how(1) As New com.sun.star.beans.PropertyValue
        how(0).Name = &quot;Hidden&quot;
        how(0).Value = True
        how(1).Name = &quot;Password&quot;
        how(1).Value = secret
        doc = StarDesktop.loadComponentFromURL(source, &quot;_blank&quot;, 0, how())
        Work(doc)
        doc.calculateAll()
        Dim save(0) As New com.sun.star.beans.PropertyValue
        save(0).Name = &quot;FilterName&quot;
        save(0).Value = &quot;Calc MS Excel 2007 XML&quot;
        doc.storeToURL(target, save())
        doc.close(True)
      End Sub
      Sub Work(doc)
      %s
      End Sub
      </script:module>
      """;

  private Macro() {}

  /** The workbook as it is after the work, with every formula computed. */
  static Path worked(Path workbook, String basic, Path folder)
      throws IOException, InterruptedException {
    return worked(workbook, "", basic, folder);
  }

  /**
   * The same for one that a password protects; the result is not.
   *
   * @param password empty where none is needed
   */
  static Path worked(Path workbook, String password, String basic, Path folder)
      throws IOException, InterruptedException {
    Path profile = Office.profile();
    Path log = folder.resolve("soffice.log");
    if (Files.notExists(profile)) {
      // The program makes its profile at the first start, and would put aside what is there
      // already.
      start(profile, log, "--terminate_after_init");
    }
    Path library = Files.createDirectories(profile.resolve("user/basic/Standard"));
    Files.writeString(library.resolve("script.xlb"), LIBRARY);
    Files.writeString(library.resolve("Hand.xba"), MODULE.formatted(escaped(basic)));
    Path result = folder.resolve("worked-" + workbook.getFileName());
    String call =
        "macro:///Standard.Hand.Run(\"%s\",\"%s\",\"%s\")"
            .formatted(workbook.toUri(), result.toUri(), password);
    start(profile, log, call);
    if (!Files.exists(result)) {
      fail("LibreOffice wrote nothing: " + Files.readString(log));
    }
    return result;
  }

  private static void start(Path profile, Path log, String argument)
      throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                List.of(
                    "soffice",
                    "-env:UserInstallation=" + profile.toUri(),
                    "--headless",
                    "--norestore",
                    argument))
            .redirectErrorStream(true)
            .redirectOutput(log.toFile())
            .start();
    if (!process.waitFor(180, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      fail("LibreOffice did not end in three minutes");
    }
  }

  private static String escaped(String basic) {
    return basic.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
  }
}
