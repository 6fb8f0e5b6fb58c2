package org.wellcurb.formula;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Lexer.Kind;
import org.wellcurb.formula.Lexer.Token;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Nearest;
import org.wellcurb.workings.Figure;
import org.wellcurb.workings.Working;

/** What names mean and which dimensions go together. */
final class Names {
  private static final Set<String> GREATEST = Set.of("greater", "greatest", "larger", "largest");
  private static final Set<String> LEAST = Set.of("lesser", "least", "smaller", "smallest");

  /** A shorter name is part of too many keys. */
  private static final int SHORTEST = 4;

  private static final int MOST_ALIKE = 4;

  /** Most names that stand in one message. */
  private static final int MOST_LISTED = 40;

  /** What is more likely meant for a year than for a number of days. */
  private static final int FIRST_YEAR = 1800;

  private static final int LAST_YEAR = 2199;

  private static final String KEYS =
      "entries.csv lists the keys; rules/README.md says where it stands";

  private final Scope scope;

  Names(Scope scope) {
    this.scope = scope;
  }

  Entry entry(Token token) throws FormulaException {
    Entry entry = scope.catalogue().find(token.text());
    if (token.kind() != Kind.NAME || entry == null) {
      throw unknown(token, "entry", scope.catalogue().nearest(token.text()), KEYS);
    }
    return entry;
  }

  /** An entry, {@code workings.NAME} or {@code figures.NAME}. */
  Expr named(Token token) throws FormulaException {
    String text = token.text();
    if (text.startsWith("workings.")) {
      return working(token, text.substring("workings.".length()));
    }
    if (text.startsWith("figures.")) {
      return figure(token, text.substring("figures.".length()));
    }
    Entry entry = scope.catalogue().find(text);
    if (entry == null) {
      @Nullable String nearest = nearestName(text);
      throw nearest == null ? unknownEntry(token) : unknown(token, "entry", nearest, KEYS);
    }
    Dimension dimension = entry.kind().dimension();
    if (dimension != null) {
      return new Expr.EntryAmount(entry, dimension);
    }
    return switch (entry.kind()) {
      case YES_NO -> new Expr.YesNo(entry, true);
      case CHOICE, TEXT -> new Expr.EntryWord(entry);
      default ->
          throw new FormulaException(
              token.from(),
              token.to(),
              text + " is a list and cannot be compared",
              "ask whether it is known: known(" + text + ")");
    };
  }

  private @Nullable String nearestName(String text) {
    Set<String> all = new TreeSet<>();
    scope.catalogue().entries().forEach(e -> all.add(e.key()));
    scope.workings().workings().forEach(w -> all.add("workings." + w.name()));
    return Nearest.of(text, all);
  }

  private Expr working(Token token, String name) throws FormulaException {
    Working working = scope.workings().find(name);
    if (working == null) {
      Set<String> all = new TreeSet<>();
      scope.workings().workings().forEach(w -> all.add("workings." + w.name()));
      throw unknown(
          token, "working", Nearest.of(token.text(), all), "rules/WORKINGS.md lists them");
    }
    return new Expr.WorkingAmount(working);
  }

  private Expr figure(Token token, String name) throws FormulaException {
    Figure figure = scope.workings().figure(name);
    if (figure == null) {
      Set<String> all = new TreeSet<>();
      scope.workings().figures().forEach(f -> all.add("figures." + f.name()));
      throw unknown(token, "figure", Nearest.of(token.text(), all), "rules/WORKINGS.md lists them");
    }
    return new Expr.FigureAmount(name, scope.figure(name), figure.unit());
  }

  Expr table(Token token) throws FormulaException {
    Table table = scope.table(token.text());
    if (table == null) {
      Set<String> all = new TreeSet<>(scope.tableNames());
      throw unknown(
          token,
          "table",
          Nearest.of(token.text(), all),
          all.isEmpty() || all.size() > MOST_LISTED
              ? "add it to the tables of the pack"
              : "there are " + String.join(", ", all));
    }
    Dimension gives = table.gives();
    return gives == null ? new Expr.TableWord(table) : new Expr.TableAmount(table, gives);
  }

  /** A word in quotes (or a number that stands for one), in lower case; refused if no choice. */
  String word(Expr.Word word, Token token) throws FormulaException {
    boolean isWord =
        token.kind() == Kind.TEXT || (token.kind() == Kind.NUMBER && token.unit() == null);
    if (!isWord) {
      throw new FormulaException(
          token.from(), token.to(), "a word in quotes must stand here", "write it as 'word'");
    }
    if (word instanceof Expr.EntryWord of
        && !of.entry().choices().isEmpty()
        && of.entry().choice(token.text()) < 0) {
      String nearest = Nearest.of(token.text().toLowerCase(Locale.ROOT), of.entry().choices());
      throw new FormulaException(
          token.from(),
          token.to(),
          "'" + token.text() + "' is not a choice of " + of.entry().key(),
          nearest == null
              ? "the choices are " + String.join(", ", of.entry().choices())
              : "did you mean '" + nearest + "'?");
    }
    // Records hold a choice by its first spelling: any other would never be equal to it.
    if (word instanceof Expr.EntryWord of && !of.entry().choices().isEmpty()) {
      Entry entry = of.entry();
      return entry.choices().get(entry.choice(token.text())).toLowerCase(Locale.ROOT);
    }
    return token.text().trim().toLowerCase(Locale.ROOT);
  }

  Expr.Amount sum(Token sign, Expr.Amount a, Expr.Amount b) throws FormulaException {
    Dimension left = a.dimension();
    Dimension right = b.dimension();
    boolean isPlus = sign.text().equals("+");
    boolean isDate = left.equals(Dimension.DATE);
    char c = sign.text().charAt(0);
    if (isDate && right.equals(Dimension.TIME)) {
      return new Expr.Arithmetic(c, a, b, Dimension.DATE);
    }
    if (isDate && right.equals(Dimension.DATE) && !isPlus) {
      return new Expr.Arithmetic(c, a, b, Dimension.TIME);
    }
    if (isPlus && left.equals(Dimension.TIME) && right.equals(Dimension.DATE)) {
      return new Expr.Arithmetic(c, b, a, Dimension.DATE);
    }
    if (!left.equals(right) || isDate) {
      throw dimensions(sign.from(), sign.to(), sign.text(), a, b);
    }
    if (left.equals(Dimension.TEMPERATURE) || left.equals(Dimension.WIRE_GAUGE)) {
      throw new FormulaException(
          sign.from(),
          sign.to(),
          "a " + left.label() + " cannot be added or taken away",
          "compare it with a limit instead");
    }
    return new Expr.Arithmetic(c, a, b, left);
  }

  Expr.Amount product(Token sign, Expr.Amount a, Expr.Amount b) throws FormulaException {
    Dimension left = a.dimension();
    Dimension right = b.dimension();
    char c = sign.text().charAt(0);
    boolean isPlain = right.equals(Dimension.NUMBER) || (left.equals(Dimension.NUMBER) && c == '*');
    boolean isOpen = left.isRatio() && right.isRatio();
    boolean isScaled = left.scale() == Dimension.Scale.ANGLE && isPlain;
    if ((!isOpen && !isScaled)
        || left.equals(Dimension.TEMPERATURE)
        || right.equals(Dimension.TEMPERATURE)) {
      throw new FormulaException(
          sign.from(),
          sign.to(),
          "a " + left.label() + " and a " + right.label() + " cannot be multiplied or divided",
          "compare it with a limit instead");
    }
    Dimension result = isScaled ? left : c == '*' ? left.times(right) : left.per(right);
    return new Expr.Arithmetic(c, a, b, result);
  }

  static FormulaException dimensions(int from, int to, String sign, Expr.Amount a, Expr.Amount b) {
    return new FormulaException(
        from,
        to,
        "a " + a.dimension().label() + " and a " + b.dimension().label() + " stand at " + sign,
        mend(a, b));
  }

  private static String mend(Expr.Amount a, Expr.Amount b) {
    Expr.Amount other = b instanceof Expr.Literal l && l.unit().equals(Units.ONE) ? a : b;
    boolean isBare =
        (b instanceof Expr.Literal l && l.unit().equals(Units.ONE))
            || (a instanceof Expr.Literal m && m.unit().equals(Units.ONE));
    if (isBare && other.dimension().equals(Dimension.DATE)) {
      Expr.Amount bare = other.equals(a) ? b : a;
      double days = bare instanceof Expr.Literal l ? l.value() : 0;
      if (days == Math.rint(days) && days >= FIRST_YEAR && days <= LAST_YEAR) {
        return "write a day of that year: " + (long) days + "-01-01";
      }
      return "say of what it is a number: "
          + (days == Math.rint(days) ? String.valueOf((long) days) : String.valueOf(days))
          + " days";
    }
    if (isBare && other.dimension().equals(Dimension.TIME)) {
      return "give the number a unit, such as days or h";
    }
    if (isBare) {
      for (Unit unit : Units.all()) {
        if (unit.dimension().equals(other.dimension()) && unit.system() != UnitSystem.METRIC) {
          return "give the number a unit, such as " + unit.symbol();
        }
      }
    }
    if (a.dimension().equals(Dimension.DATE) || b.dimension().equals(Dimension.DATE)) {
      return "a day is written 2024-04-01, a span of days 60 days";
    }
    boolean isFlow =
        (a.dimension().isRatio() && a.dimension().times(Dimension.TIME).equals(b.dimension()))
            || (b.dimension().isRatio()
                && b.dimension().times(Dimension.TIME).equals(a.dimension()));
    return isFlow
        ? "what flows comes to an amount in a time: multiply it, such as by 1 day"
        : "compare amounts of one dimension";
  }

  private static FormulaException unknown(
      Token token, String what, @Nullable String nearest, String ifNone) {
    String article = what.equals("entry") ? "an " : "a ";
    return new FormulaException(
        token.from(),
        token.to(),
        token.text().isEmpty()
            ? article + what + " must stand here"
            : token.text() + " is not " + article + what,
        nearest == null ? ifNone : "did you mean " + nearest + "?");
  }

  /** What would mend a name that stands for no entry and is near none. */
  private FormulaException unknownEntry(Token token) {
    String text = token.text();
    String mend = KEYS;
    String part = text.substring(0, text.indexOf('.') + 1);
    List<String> beside =
        scope.catalogue().entries().stream()
            .map(Entry::key)
            .filter(key -> !part.isEmpty() && key.startsWith(part))
            .toList();
    if (!beside.isEmpty() && beside.size() <= MOST_LISTED) {
      mend = "there are " + String.join(", ", beside);
    } else if (text.equals("the")) {
      mend = "leave it out; the greater of two is written max(80 ft, 30 ft)";
    } else if (Lexer.isUnit(text)) {
      mend = "a unit follows its number after a blank or nothing: 25 " + text;
    } else if (GREATEST.contains(text) || LEAST.contains(text)) {
      mend = "write " + (LEAST.contains(text) ? "min" : "max") + "(80 ft, 30 ft)";
    } else if (scope.catalogue().entries().stream().anyMatch(e -> e.choice(text) >= 0)) {
      mend = "if it is a word to compare with, put it in quotes: '" + text + "'";
    } else {
      List<String> alike =
          scope.catalogue().entries().stream()
              .map(Entry::key)
              .filter(key -> text.length() >= SHORTEST && key.contains(text))
              .limit(MOST_ALIKE)
              .toList();
      mend = alike.isEmpty() ? mend : "there are " + String.join(", ", alike);
    }
    return new FormulaException(token.from(), token.to(), text + " is not an entry", mend);
  }
}
