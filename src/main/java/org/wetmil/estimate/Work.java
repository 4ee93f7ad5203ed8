package org.wetmil.estimate;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.wetmil.catalogue.Answers;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Condition;
import org.wetmil.catalogue.Lookup;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Shape;
import org.wetmil.catalogue.Sprayer;
import org.wetmil.catalogue.Surface;
import org.wetmil.catalogue.Texture;
import org.wetmil.trade.Flow;
import org.wetmil.trade.TipCode;

/**
 * A bid line with its names looked up and its defaults taken: what is to be painted, with what.
 *
 * @param texture smooth where the cell is blank; null when the line names none that is known
 */
public record Work(
    BidLine line,
    Lookup<Coating> coatingFound,
    Lookup<Surface> surfaceFound,
    Lookup<Condition> conditionFound,
    Lookup<Texture> textureFound,
    Texture texture,
    Lookup<Sprayer> sprayerFound,
    Lookup<Shape> shapeFound,
    TipCode.Result tipRead) {
  /** Words under Include that keep a line out of the totals. */
  static final List<String> LEFT_OUT = words(List.of("no", "n", "0", "false"), "no");

  /** Words under Include that say what is done anyway. */
  private static final List<String> TAKEN_IN =
      words(List.of("", "yes", "y", "1", "true", "x"), "yes");

  private static List<String> words(List<String> english, String answer) {
    return Stream.concat(english.stream(), Answers.wordsFor(answer).stream()).toList();
  }

  static Work of(BidLine line, Catalogue catalogue) {
    InputValue tip = line.get(InputColumn.TIP);
    Lookup<Coating> coating = catalogue.coating(line.text(InputColumn.COATING));
    Lookup<Texture> textureFound = catalogue.texture(line.text(InputColumn.TEXTURE));
    return new Work(
        line,
        coating,
        catalogue.surface(line.text(InputColumn.SURFACE), coating.orNull()),
        catalogue.condition(line.text(InputColumn.CONDITION)),
        textureFound,
        textureFound instanceof Lookup.Blank
            ? catalogue.texture(Texture.SMOOTH).orNull()
            : textureFound.orNull(),
        catalogue.sprayer(line.text(InputColumn.SPRAYER)),
        catalogue.shape(line.text(InputColumn.SHAPE)),
        tip.state() == InputValue.State.DATE
            ? TipCode.refuseDate(tip.raw())
            : TipCode.read(tip.raw()));
  }

  /** The same line done with another coating. */
  public Work with(Coating coating) {
    return new Work(
        line,
        new Lookup.Found<>(coating, false),
        surfaceFound,
        conditionFound,
        textureFound,
        texture,
        sprayerFound,
        shapeFound,
        tipRead);
  }

  /** Null when the line names none that is known. */
  public Coating coating() {
    return coatingFound.orNull();
  }

  /** Null when the line names none that is known. */
  public Surface surface() {
    return surfaceFound.orNull();
  }

  /** Null when the line names none that is known. */
  public Condition condition() {
    return conditionFound.orNull();
  }

  /** Null when the line names none that is known. */
  public Sprayer sprayer() {
    return sprayerFound.orNull();
  }

  /** Null when the line names none that is known. */
  public Shape shape() {
    return shapeFound.orNull();
  }

  /** The tip that the estimator planned; null when there is none that can be read. */
  public TipCode planned() {
    return tipRead instanceof TipCode.Read read ? read.tip() : null;
  }

  /** Thinner by volume of paint, 0 when not stated. */
  public double thinnerShare() {
    double share = line.number(InputColumn.THINNER);
    return Double.isNaN(share) || share < 0 ? 0 : share;
  }

  /** Whether the surface is rough: a texture other than smooth. */
  public boolean isRough() {
    return texture != null && texture.rough();
  }

  /** Girth of trim, columns and pipes in inches; NaN when neither line nor surface state it. */
  public double girthIn() {
    double stated = line.number(InputColumn.GIRTH);
    return Double.isNaN(stated) ? surface().girthIn() : stated;
  }

  /** The setting that the paint left behind is taken from: less in pails where a hose is stated. */
  public Setting waste() {
    return sprayer() != null && sprayer().hasHose() ? Setting.PAIL_WASTE : Setting.WASTE;
  }

  /** Whether the line counts in the totals: not when Include says no. */
  public boolean isIncluded() {
    return !LEFT_OUT.contains(includeWord());
  }

  /** Whether the word under Include is one that is known. */
  public boolean isIncludeKnown() {
    return LEFT_OUT.contains(includeWord()) || TAKEN_IN.contains(includeWord());
  }

  /** Whether the word under Back-roll is one that is known. */
  public boolean isRollingKnown() {
    String word = line.text(InputColumn.BACK_ROLL);
    return word.isEmpty() || Hours.rolling(word) != null;
  }

  private String includeWord() {
    return line.text(InputColumn.INCLUDE).toLowerCase(Locale.ROOT);
  }

  /** Density of the coating as sprayed in kg/L. */
  public double sprayedKgPerL() {
    return Flow.thinnedKgPerL(
        coating().densityKgL(), thinnerShare(), coating().thinnerDensityKgL());
  }
}
