package org.wetmil.jobs.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The steps of an explanation, read back from its text. */
record ToldSteps(List<Told> steps) {
  private static final Pattern HEADING =
      Pattern.compile("\\d+ +([^:]+): (none|[-\\d.]+)(.*?)(?:  \\(([A-Z]+\\d+).*\\))?");
  private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");

  /**
   * One step.
   *
   * @param shown the number of its heading
   * @param cell empty when it has none
   * @param put the line with the numbers; empty when there is none
   * @param result the number that this came to, before it was held
   * @param taken the number that the step ends with; NaN without a formula
   */
  record Told(String name, String shown, String cell, String put, double result, double taken) {}

  static ToldSteps of(List<String> lines) {
    List<Told> steps = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Matcher heading = HEADING.matcher(lines.get(i));
      if (heading.matches()) {
        List<String> equals = new ArrayList<>();
        for (int at = i + 1; at < lines.size() && !lines.get(at).isEmpty(); at++) {
          if (lines.get(at).startsWith("    = ")) {
            equals.add(lines.get(at).substring(6));
          } else if (equals.size() == 1 && lines.get(at).startsWith("      ")) {
            equals.set(0, equals.get(0) + " " + lines.get(at).strip());
          }
        }
        steps.add(told(heading, equals));
      }
    }
    return new ToldSteps(steps);
  }

  private static Told told(Matcher heading, List<String> equals) {
    String last = equals.isEmpty() ? "" : equals.get(equals.size() - 1);
    int taken = last.indexOf("taken as ");
    return new Told(
        heading.group(1),
        heading.group(2),
        heading.group(4) == null ? "" : heading.group(4),
        equals.size() == 2 ? equals.get(0) : "",
        number(last),
        number(taken < 0 ? last : last.substring(taken)));
  }

  private static double number(String text) {
    Matcher number = NUMBER.matcher(text);
    return number.find() ? Double.parseDouble(number.group()) : Double.NaN;
  }
}
