package org.wetmil.workbook.opc;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** The parts that one part of a package refers to. */
public final class Relationships {
  /**
   * One reference to a part of the same package.
   *
   * @param id as the referring part names it
   * @param type the last word of the type's address, the same in strict and transitional workbooks
   * @param target name of the part
   */
  public record Relationship(String id, String type, String target) {}

  private final List<Relationship> all;

  private Relationships(List<Relationship> all) {
    this.all = all;
  }

  /** The references of a part; of the package itself when the part is "". */
  public static Relationships of(ZipPackage zip, String part) {
    String from = partOf(part);
    if (!zip.has(from)) {
      return new Relationships(List.of());
    }
    return zip.xml(
        from,
        at -> {
          List<Relationship> found = new ArrayList<>();
          while (XmlIn.nextChild(at)) {
            String type = XmlIn.attribute(at, "Type");
            String target = XmlIn.attribute(at, "Target");
            if (type != null
                && target != null
                && !"External".equals(XmlIn.attribute(at, "TargetMode"))) {
              found.add(
                  new Relationship(
                      XmlIn.attribute(at, "Id"), lastWord(type), resolve(zip, part, target)));
            }
            XmlIn.skip(at);
          }
          return new Relationships(found);
        });
  }

  /** Name of the part that holds a part's references. */
  public static String partOf(String part) {
    int slash = part.lastIndexOf('/') + 1;
    return part.substring(0, slash) + "_rels/" + part.substring(slash) + ".rels";
  }

  /** The last word of a type's address, such as "worksheet". */
  public static String lastWord(String type) {
    return type.substring(type.lastIndexOf('/') + 1);
  }

  /** The first reference of a type. */
  public Optional<Relationship> findType(String type) {
    return all.stream().filter(each -> each.type().equals(type)).findFirst();
  }

  /** All references of a type. */
  public List<Relationship> listType(String type) {
    return all.stream().filter(each -> each.type().equals(type)).toList();
  }

  /** The references of an id: one at most in a sound package. */
  public List<Relationship> listId(String id) {
    return all.stream().filter(each -> each.id() != null && each.id().equals(id)).toList();
  }

  private static String resolve(ZipPackage zip, String part, String target) {
    Deque<String> path = new ArrayDeque<>();
    String base = target.startsWith("/") ? "" : part.substring(0, part.lastIndexOf('/') + 1);
    for (String step : (base + target).replace('\\', '/').split("/", -1)) {
      if (step.equals("..")) {
        path.pollLast();
      } else if (!step.isEmpty() && !step.equals(".")) {
        path.addLast(step);
      }
    }
    String name = String.join("/", path);
    if (!zip.has(name) && name.contains("%")) {
      try {
        return URLDecoder.decode(name.replace("+", "%2B"), StandardCharsets.UTF_8);
      } catch (IllegalArgumentException e) {
        return name;
      }
    }
    return name;
  }
}
