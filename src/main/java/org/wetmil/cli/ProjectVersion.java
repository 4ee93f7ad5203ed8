package org.wetmil.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** Reads the version that the build wrote beside this class, so that it is stated only once. */
final class ProjectVersion implements IVersionProvider {

  private static final String RESOURCE = "version.properties";

  @Override
  public String[] getVersion() {
    return new String[] {"wetmil " + version()};
  }

  /** The version of the program, as in 0.1.0. */
  static String version() {
    try (InputStream in = ProjectVersion.class.getResourceAsStream(RESOURCE)) {
      Properties properties = new Properties();
      properties.load(in);
      return properties.getProperty("version");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
