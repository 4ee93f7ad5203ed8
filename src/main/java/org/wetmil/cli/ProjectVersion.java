package org.wetmil.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** Reads the version that the build wrote beside this class, so that it is stated only once. */
final class ProjectVersion implements IVersionProvider {

  private static final String RESOURCE = "version.properties";

  @Override
  public String[] getVersion() throws IOException {
    try (InputStream in = ProjectVersion.class.getResourceAsStream(RESOURCE)) {
      Properties properties = new Properties();
      properties.load(in);
      return new String[] {"wetmil " + properties.getProperty("version")};
    }
  }
}
