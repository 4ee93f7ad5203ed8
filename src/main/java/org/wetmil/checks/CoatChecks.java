package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.COATS;
import static org.wetmil.estimate.InputColumn.SPECIFIED_FILM;

import java.util.List;
import java.util.Optional;
import org.wetmil.catalogue.Kind;
import org.wetmil.estimate.CoatPlan;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.quantity.Count;
import org.wetmil.quantity.Quantity;
import org.wetmil.trade.FilmAcceptance;

/** Coats and the film that they build. */
final class CoatChecks {
  static final List<Check> ALL =
      List.of(
          new Check(
              "coats-not-whole",
              Severity.WARNING,
              "The coats are no whole number",
              "A part of a coat is painted as a whole one.",
              Kind.HOUSE,
              "coats are whole, from 1 to " + CoatPlan.MOST,
              "Type whole coats, or empty the cell to have them taken from the film.",
              Rule.ofLine(CoatChecks::notWhole)),
          new Check(
              "coats-many",
              Severity.WARNING,
              "The coats are more than a surface gets",
              "Paint and hours are counted for each; a film in the wrong unit takes dozens.",
              Kind.HOUSE,
              "the greatest usual coats",
              "Check the coats, or the specified film and its unit.",
              Rule.ofLine(CoatChecks::many)),
          new Check(
              "coats-too-few",
              Severity.WARNING,
              "The coats are too few for the specified film",
              "A film that is forced into fewer coats runs; held to what a coat takes, it is thin.",
              Kind.HOUSE,
              "setting Working maximum and the coating's greatest wet film",
              "Plan the coats named, or a coating of more solids.",
              Rule.ofLine(CoatChecks::tooFew)),
          new Check(
              "coat-raised",
              Severity.NOTE,
              "Each coat is raised to the least that the coating takes",
              "A coat under its least wet film does not close, so that more is laid than specified.",
              Kind.HOUSE,
              "the coating's least wet film; its data sheet wins",
              "Plan fewer coats, or accept the film named.",
              Rule.ofLine(CoatChecks::raised)),
          new Check(
              "dry-film-outside",
              Severity.WARNING,
              "The total dry film is outside the specification",
              "A film outside the specification can be refused.",
              Kind.PUBLISHED,
              "coating practice standard of 2012 as quoted by others: 80 to 120 % of a single value",
              "Plan the coats named; where none fit, change the coating or the tip.",
              Rule.ofLine(CoatChecks::outside)),
          new Check(
              "dry-film-under",
              Severity.NOTE,
              "The total dry film is somewhat under the specified value",
              "It is within what is usually accepted, but an inspector may take the value as a least.",
              Kind.PUBLISHED,
              "coating practice standards as quoted by others: 2004 the value, 2012 80 % of it",
              "Ask whether the value is a least or an average.",
              Rule.ofLine(CoatChecks::under)));

  /** What two ways of computing one film may differ by. */
  private static final double ROUNDING = 1e-9;

  private CoatChecks() {}

  private static Optional<Fault> notWhole(Line line) {
    double stated = line.number(COATS);
    boolean whole = stated == Math.rint(stated) && stated >= 1 && stated <= CoatPlan.MOST;
    if (Double.isNaN(stated) || whole) {
      return Optional.empty();
    }
    String measured = Say.number(stated, 2);
    String taken = line.isSetUp() ? ", so " + line.filled().coats().coats() + " are counted" : "";
    return line.found(
        COATS,
        measured,
        "whole, 1 to " + CoatPlan.MOST,
        "%s coats is not a whole number from 1 to %s%s; type whole coats."
            .formatted(measured, CoatPlan.MOST, taken));
  }

  private static Optional<Fault> many(Line line) {
    int usual = (int) CheckLimits.MANY_COATS.value();
    if (!line.isSetUp() || line.filled().coats().coats() <= usual) {
      return Optional.empty();
    }
    String coats = Count.of(line.filled().coats().coats(), "coat");
    String limit = Integer.toString(usual);
    if (line.filled().coats().basis() != CoatPlan.Basis.SPECIFIED_FILM) {
      return line.found(
          line.has(COATS) ? COATS : null,
          coats,
          limit,
          "%s are more than the %s that a surface gets; check them.".formatted(coats, limit));
    }
    return line.found(
        SPECIFIED_FILM,
        coats,
        limit,
        "%s dry takes %s of %s, more than the %s that a surface gets; check the film%s."
            .formatted(
                line.say(Quantity.FILM, line.number(SPECIFIED_FILM)),
                coats,
                line.coating().name(),
                limit,
                LikelyFilmUnit.of(line).map(said -> ", which looks like " + said).orElse("")));
  }

  private static Optional<Fault> tooFew(Line line) {
    if (!line.isSetUp() || !line.has(SPECIFIED_FILM)) {
      return Optional.empty();
    }
    FilmOfCoats film = new FilmOfCoats(line);
    int wanted = film.wanted();
    int coats = line.filled().coats().coats();
    if (coats >= wanted) {
      return Optional.empty();
    }
    boolean fits = film.accepted().holds(film.dryMil(wanted));
    Optional<String> likely = LikelyFilmUnit.of(line);
    if (likely.isPresent()) {
      return line.found(
          SPECIFIED_FILM,
          Integer.toString(coats),
          Integer.toString(wanted),
          "%s of %s cannot build %s dry, which takes %s and looks like %s."
              .formatted(
                  Count.of(coats, "coat"),
                  line.coating().name(),
                  line.say(Quantity.FILM, line.number(SPECIFIED_FILM)),
                  wanted,
                  likely.get()));
    }
    return line.found(
        COATS,
        Integer.toString(coats),
        Integer.toString(wanted),
        "%s of %s cannot build %s dry without running; plan %s, which %s%s."
            .formatted(
                Count.of(coats, "coat"),
                line.coating().name(),
                line.say(Quantity.FILM, line.number(SPECIFIED_FILM)),
                wanted,
                film.builds(wanted),
                fits ? "" : ", or change the coating, since that is outside the specification"));
  }

  private static Optional<Fault> raised(Line line) {
    if (!line.isSetUp() || outside(line).isPresent()) {
      return Optional.empty();
    }
    double least = line.coating().wetMinMil();
    double wanted = line.filled().coats().wantedMil();
    if (!(wanted < least * (1 - ROUNDING))) {
      return Optional.empty();
    }
    Say.Pair said = line.pair(Quantity.FILM, wanted, least);
    return line.found(
        SPECIFIED_FILM,
        said.measured(),
        said.limit(),
        "%s wet a coat is under the %s that %s needs, so the coats build %s dry; plan fewer coats."
            .formatted(said.measured(), said.limit(), line.coating().name(), dry(line)));
  }

  private static String dry(Line line) {
    return line.say(Quantity.FILM, line.filled().base(FilledColumn.DRY_FILM));
  }

  private static Optional<Fault> outside(Line line) {
    if (!line.isSetUp() || !line.has(SPECIFIED_FILM)) {
      return Optional.empty();
    }
    FilmOfCoats film = new FilmOfCoats(line);
    FilmAcceptance accepted = film.accepted();
    double dryMil = line.filled().base(FilledColumn.DRY_FILM);
    boolean low = accepted.isUnder(dryMil);
    boolean high = accepted.isOver(dryMil);
    // too few coats are said once, under Coats
    if (!(low || high) || (low && tooFew(line).isPresent())) {
      return Optional.empty();
    }
    Say.Pair said =
        line.pair(Quantity.FILM, dryMil, low ? accepted.leastMil() : accepted.mostMil());
    return line.found(
        SPECIFIED_FILM,
        said.measured(),
        line.range(Quantity.FILM, accepted.leastMil(), accepted.mostMil()),
        "The coats build %s dry, %s the %s accepted; %s."
            .formatted(
                said.measured(),
                low ? "under" : "over",
                said.limit(),
                LikelyFilmUnit.of(line)
                    .map(likely -> "the film specified looks like " + likely)
                    .orElseGet(film::advice)));
  }

  private static Optional<Fault> under(Line line) {
    if (!line.isSetUp() || !line.has(SPECIFIED_FILM)) {
      return Optional.empty();
    }
    InputValue specified = line.cell(SPECIFIED_FILM);
    double dryMil = line.filled().base(FilledColumn.DRY_FILM);
    if (specified.low() < specified.high()
        || !(dryMil < specified.number() * (1 - ROUNDING))
        || new FilmOfCoats(line).accepted().isUnder(dryMil)) {
      return Optional.empty();
    }
    Say.Pair said = line.pair(Quantity.FILM, dryMil, specified.number());
    return line.found(
        SPECIFIED_FILM,
        said.measured(),
        said.limit(),
        "The coats build %s dry on average, under the %s specified; ask whether that is a least."
            .formatted(said.measured(), said.limit()));
  }
}
