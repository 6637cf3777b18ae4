package soundings.chemistry;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Finds the substance a recipe names: by formula, however its water is written, or by a name that only one substance has. Brackets
 * behind a name say more of it: {@code soda (Na2CO3)}, {@code calcium chloride (dihydrate)}.
 */
final class Shelf {
    private static final Pattern BRACKETED = Pattern.compile("^(.+?)\\s+\\((.+)\\)$");

    private final Substances substances;

    Shelf(Substances substances) {
        this.substances = substances;
    }

    Salt find(String written, List<String> assumptions) {
        String name = written.strip();
        Matcher bracketed = BRACKETED.matcher(name);
        List<Salt> found = bracketed.matches()
                ? bracketed(bracketed.group(1), bracketed.group(2), assumptions)
                : known(name, assumptions);
        if (found.isEmpty()) {
            throw new Unreadable(unknown(bracketed.matches() ? bracketed.group(1) : name));
        }
        if (found.size() > 1) {
            throw new Unreadable("'" + name + "' may be " + formulas(found) + ": write the formula");
        }
        return found.get(0);
    }

    /** What name and brackets agree on; the one that is known where the other says nothing. */
    private List<Salt> bracketed(String name, String more, List<String> assumptions) {
        List<Salt> together = named(name + " " + more);
        if (!together.isEmpty()) {
            return together;
        }
        List<Salt> outer = known(name, assumptions);
        List<Salt> inner = known(more, assumptions);
        if (outer.isEmpty() || inner.isEmpty()) {
            String taken = outer.isEmpty() ? more : name;
            assumptions.add("'" + name + " (" + more + ")' taken as " + taken.strip());
            return outer.isEmpty() ? inner : outer;
        }
        List<Salt> both = outer.stream().filter(inner::contains).toList();
        if (both.isEmpty()) {
            throw new Unreadable("'" + name + "' is " + formulas(outer) + ", and '" + more + "' is " + formulas(inner)
                    + ": write the formula of the one that is meant");
        }
        return both;
    }

    private List<Salt> known(String written, List<String> assumptions) {
        List<Salt> named = named(written);
        return named.isEmpty() ? ofFormula(written.strip(), assumptions) : named;
    }

    private List<Salt> named(String written) {
        String name = Names.fold(written);
        return substances.salts().stream()
                .filter(s -> s.names().stream().anyMatch(n -> Names.fold(n).equals(name)))
                .toList();
    }

    private List<Salt> ofFormula(String written, List<String> assumptions) {
        try {
            Formula formula = Formula.of(written);
            formula.molarMass(substances.elements());
            return List.of(substances.salts().stream()
                    .filter(s -> s.formula().atoms().equals(formula.atoms()))
                    .findFirst()
                    .orElseGet(() -> unlisted(formula, assumptions)));
        } catch (IllegalArgumentException e) {
            return ofLooseFormula(written);
        }
    }

    private static Salt unlisted(Formula formula, List<String> assumptions) {
        assumptions.add(formula + " is not in the table of salts: its elements are counted, its alkalinity is not");
        return new Salt(formula, List.of(), 0, Map.of(), "");
    }

    /** {@code cacl2 2h2o}: letters of any case, water written in any way. */
    private List<Salt> ofLooseFormula(String written) {
        String key = key(written);
        return substances.salts().stream()
                .filter(s -> key(s.formula().text()).equals(key))
                .limit(1)
                .toList();
    }

    private static String key(String formula) {
        return Names.fold(formula).replaceAll("[\\s.·*]", "");
    }

    /** Names that hold the unknown one as a word are what may have been meant. */
    private String unknown(String written) {
        String word = Names.fold(written);
        List<String> like = substances.salts().stream()
                .flatMap(s -> s.names().stream()
                        .filter(n -> List.of(Names.fold(n).split(" ")).contains(word))
                        .limit(1)
                        .map(n -> n + " (" + s.formula().text() + ")"))
                .toList();
        return like.isEmpty()
                ? "no substance '" + written + "' is known: write its formula, as MgCl2.6H2O"
                : "'" + written + "' alone may be " + String.join(" or ", like)
                        + ": write the whole name or the formula";
    }

    private static String formulas(List<Salt> salts) {
        return salts.stream().map(s -> s.formula().text()).collect(Collectors.joining(" or "));
    }
}
