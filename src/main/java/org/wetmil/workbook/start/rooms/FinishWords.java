package org.wetmil.workbook.start.rooms;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Lookup;

/** Which coating a finish names, if it names one: "Acrylic latex paint, eggshell" is latex. */
public final class FinishWords {
  private static final Pattern GAPS = Pattern.compile("[\\s,;/()+&:]+");

  /** A finish that is one of these is no coating whatever else it says: vinyl wall covering. */
  private static final Pattern NO_PAINT =
      Pattern.compile(
          "(?iu)\\b(?:tiles?|tiled|fliesen?|azulejos?|paper|wallpaper|tapete|carpet|teppich|parquet|parkett|linoleum|vinyl|terrazzo|stone|marble"
              + "|granite|rubber|laminate|glass|unpainted)\\b");

  /** What a floor may be left as, or is laid with. */
  private static final Pattern BARE =
      Pattern.compile("(?iu)\\b(?:concrete|screed|hardwood|timber|wood|beton|estrich|holz)\\b");

  /** How far a finish shines, as the trade says it; the longer words first. */
  private static final Pattern SHEEN =
      Pattern.compile(
          "(?iu)\\b(high[ -]gloss|semi[ -]?gloss|eggshell|satin|matte?|flat|gloss|seidenmatt"
              + "|seidengl(?:ä|ae)nzend|gl(?:ä|ae)nzend|mate|satinado|brillante)\\b");

  private FinishWords() {}

  /** Whether the finish is one that is not painted, such as tiles. */
  public static boolean isNoPaint(String finish) {
    return NO_PAINT.matcher(finish).find() && coating(finish).isEmpty();
  }

  /** Whether a text names a finish of any kind, where it might be the name of a storey. */
  static boolean isFinish(String text) {
    return NO_PAINT.matcher(text).find() || BARE.matcher(text).find() || !coating(text).isEmpty();
  }

  /** The sheen that a finish names; empty when it names none. */
  public static String sheen(String finish) {
    Matcher found = SHEEN.matcher(finish);
    return found.find() ? found.group(1).toLowerCase(Locale.ROOT) : "";
  }

  /** The name of the one coating that is meant; empty when there is none, or more than one. */
  public static String coating(String finish) {
    if (Catalogue.builtIn().coating(finish) instanceof Lookup.Found<Coating> whole) {
      return whole.ambiguous() ? "" : whole.value().name();
    }
    if (NO_PAINT.matcher(finish).find()) {
      return "";
    }
    List<String> words = Arrays.stream(GAPS.split(finish)).filter(word -> !word.isEmpty()).toList();
    Set<String> found = new LinkedHashSet<>();
    for (int length = Math.min(3, words.size()); length > 0 && found.isEmpty(); length--) {
      for (int from = 0; from + length <= words.size(); from++) {
        String part = String.join(" ", words.subList(from, from + length));
        if (Catalogue.builtIn().coating(part) instanceof Lookup.Found<Coating> coating
            && !coating.ambiguous()) {
          found.add(coating.value().name());
        }
      }
    }
    return found.size() == 1 ? found.iterator().next() : "";
  }
}
