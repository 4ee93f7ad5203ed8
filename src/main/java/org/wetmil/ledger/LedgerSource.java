package org.wetmil.ledger;

import java.io.IOException;
import java.io.InputStream;

/**
 * The bytes of a ledger; opened several times, since its conventions are found before its lines.
 */
@FunctionalInterface
public interface LedgerSource {
  InputStream open() throws IOException;
}
