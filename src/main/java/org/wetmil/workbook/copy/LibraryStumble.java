package org.wetmil.workbook.copy;

import java.util.List;

/** Tells a workbook that the library stumbles over from a fault of this program. */
final class LibraryStumble {
  private static final List<String> LIBRARY =
      List.of(
          "org.apache.poi.",
          "org.apache.xmlbeans.",
          "org.openxmlformats.",
          "com.microsoft.schemas.");

  private LibraryStumble() {}

  /**
   * Whether something was thrown by the library or on its behalf: the first that is not the
   * platform's own among those who called is the library. It throws exceptions of many kinds, of
   * the platform's too, on parts that contradict each other.
   */
  static boolean is(Throwable thrown) {
    for (StackTraceElement caller : thrown.getStackTrace()) {
      if (!isPlatform(caller.getClassName())) {
        return LIBRARY.stream().anyMatch(caller.getClassName()::startsWith);
      }
    }
    return false;
  }

  private static boolean isPlatform(String name) {
    return List.of("java.", "javax.", "jdk.", "sun.", "com.sun.").stream()
        .anyMatch(name::startsWith);
  }
}
