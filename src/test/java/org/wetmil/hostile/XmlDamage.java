package org.wetmil.hostile;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is done to the text of a part in XML. Most leave it well formed, but nonsense. */
enum XmlDamage {
  ELEMENT_DROPPED {
    @Override
    String to(String xml, Random random) {
      Span span = Span.any(xml, random);
      return xml.substring(0, span.from()) + xml.substring(span.to());
    }
  },
  ELEMENT_REPEATED {
    @Override
    String to(String xml, Random random) {
      Span span = Span.any(xml, random);
      String element = xml.substring(span.from(), span.to());
      int most = Math.max(1, Math.min(500, 400_000 / element.length()));
      return xml.substring(0, span.to())
          + element.repeat(1 + random.nextInt(most))
          + xml.substring(span.to());
    }
  },
  ELEMENT_NESTED {
    @Override
    String to(String xml, Random random) {
      Span span = Span.any(xml, random);
      String element = xml.substring(span.from(), span.to());
      String name = element.substring(1).split("[\\s/>]", 2)[0];
      int times = random.nextBoolean() ? 1 + random.nextInt(5) : 1 + random.nextInt(20_000);
      return xml.substring(0, span.from())
          + ("<" + name + ">").repeat(times)
          + element
          + ("</" + name + ">").repeat(times)
          + xml.substring(span.to());
    }
  },
  ELEMENT_MOVED {
    @Override
    String to(String xml, Random random) {
      Span span = Span.any(xml, random);
      String element = xml.substring(span.from(), span.to());
      String rest = xml.substring(0, span.from()) + xml.substring(span.to());
      int at = Span.any(rest, random).from();
      return rest.substring(0, at) + element + rest.substring(at);
    }
  },
  ATTRIBUTE_VALUE {
    @Override
    String to(String xml, Random random) {
      return replaced(xml, "(?<=[a-zA-Z]=\")[^\"<]*(?=\")", random, Nasty.xml(Nasty.any(random)));
    }
  },
  ATTRIBUTE_SWAPPED {
    @Override
    String to(String xml, Random random) {
      List<String> values = new ArrayList<>();
      Matcher value = Pattern.compile("(?<=[a-zA-Z]=\")[^\"<]*(?=\")").matcher(xml);
      while (value.find()) {
        values.add(value.group());
      }
      return values.isEmpty()
          ? xml
          : replaced(
              xml,
              "(?<=[a-zA-Z]=\")[^\"<]*(?=\")",
              random,
              values.get(random.nextInt(values.size())));
    }
  },
  ATTRIBUTE_DROPPED {
    @Override
    String to(String xml, Random random) {
      return replaced(xml, "\\s[\\w:]+=\"[^\"<]*\"", random, "");
    }
  },
  TEXT {
    @Override
    String to(String xml, Random random) {
      return replaced(xml, "(?<=>)[^<>]+(?=</)", random, Nasty.xml(Nasty.any(random)));
    }
  },
  TAG_RENAMED {
    @Override
    String to(String xml, Random random) {
      Span span = Span.any(xml, random);
      String name = xml.substring(span.from() + 1).split("[\\s/>]", 2)[0];
      String other = xml.substring(Span.any(xml, random).from() + 1).split("[\\s/>]", 2)[0];
      return xml.replaceAll("(</?)" + Pattern.quote(name) + "(?=[\\s/>])", "$1" + other);
    }
  },
  INSIDE_OF_A_COMMENT {
    @Override
    String to(String xml, Random random) {
      Span span = Span.any(xml, random);
      String element = xml.substring(span.from(), span.to());
      String instead =
          random.nextBoolean() ? "<![CDATA[" + element + "]]>" : "<!--" + element + "--><?a b?>";
      return xml.substring(0, span.from()) + instead + xml.substring(span.to());
    }
  },
  CUT {
    @Override
    String to(String xml, Random random) {
      return xml.substring(0, random.nextInt(xml.length()));
    }
  },
  ENTITIES {
    @Override
    String to(String xml, Random random) {
      StringBuilder type = new StringBuilder("<!DOCTYPE a [<!ENTITY e0 \"ha\">");
      for (int i = 1; i < 30; i++) {
        type.append("<!ENTITY e%d \"&e%d;&e%d;&e%d;\">".formatted(i, i - 1, i - 1, i - 1));
      }
      type.append("<!ENTITY out SYSTEM \"file:///etc/hostname\">]>");
      int root = Span.root(xml);
      return replaced(
          xml.substring(0, root) + type + xml.substring(root),
          "(?<=>)[^<>]*(?=</)",
          random,
          random.nextBoolean() ? "&e29;" : "&out;");
    }
  },
  ENCODING {
    @Override
    String to(String xml, Random random) {
      List<String> names = List.of("UTF-16", "ISO-8859-1", "x-none", "UTF-32", "IBM037");
      String declared =
          "<?xml version=\"1.0\" encoding=\"" + names.get(random.nextInt(names.size())) + "\"?>";
      return declared + xml.substring(Span.root(xml));
    }
  },
  CONTROL_CHARACTER {
    @Override
    String to(String xml, Random random) {
      int at = random.nextInt(xml.length());
      List<String> signs =
          List.of("\u0000", "&#0;", "&#1;", "\uFFFE", "&nbsp;", "&#xD800;", "<", "&");
      return xml.substring(0, at) + signs.get(random.nextInt(signs.size())) + xml.substring(at);
    }
  };

  abstract String to(String xml, Random random);

  /** Replaces one of the places that match. */
  static String replaced(String xml, String pattern, Random random, String with) {
    Matcher matcher = Pattern.compile(pattern).matcher(xml);
    List<int[]> found = new ArrayList<>();
    while (matcher.find()) {
      found.add(new int[] {matcher.start(), matcher.end()});
    }
    if (found.isEmpty()) {
      return xml;
    }
    int[] one = found.get(random.nextInt(found.size()));
    return xml.substring(0, one[0]) + with + xml.substring(one[1]);
  }
}
