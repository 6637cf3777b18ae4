package soundings.chemistry;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Finds the substance a recipe names: by formula, however its water is written, or by a name that only one substance has. */
final class Shelf {
    private final Substances substances;

    Shelf(Substances substances) {
        this.substances = substances;
    }

    Salt find(String written, List<String> assumptions) {
        String name = Names.fold(written);
        List<Salt> named = substances.salts().stream()
                .filter(s -> s.names().stream().anyMatch(n -> Names.fold(n).equals(name)))
                .toList();
        if (named.size() > 1) {
            throw new Unreadable("'" + written.strip() + "' may be " + formulas(named, " or ") + ": write the formula");
        }
        return named.isEmpty() ? ofFormula(written.strip(), assumptions) : named.get(0);
    }

    private Salt ofFormula(String written, List<String> assumptions) {
        try {
            Formula formula = Formula.of(written);
            formula.molarMass(substances.elements());
            return substances.salts().stream()
                    .filter(s -> s.formula().atoms().equals(formula.atoms()))
                    .findFirst()
                    .orElseGet(() -> unlisted(formula, assumptions));
        } catch (IllegalArgumentException e) {
            return ofLooseFormula(written);
        }
    }

    private static Salt unlisted(Formula formula, List<String> assumptions) {
        assumptions.add(formula + " is not in the table of salts: its elements are counted, its alkalinity is not");
        return new Salt(formula, List.of(), 0, Map.of(), "");
    }

    /** {@code cacl2 2h2o}: letters of any case, water written in any way. */
    private Salt ofLooseFormula(String written) {
        String key = key(written);
        return substances.salts().stream()
                .filter(s -> key(s.formula().text()).equals(key))
                .findFirst()
                .orElseThrow(() ->
                        new Unreadable("no substance '" + written + "' is known: write its formula, as MgCl2.6H2O"));
    }

    private static String key(String formula) {
        return Names.fold(formula).replaceAll("[\\s.·*]", "");
    }

    private static String formulas(List<Salt> salts, String between) {
        return salts.stream().map(s -> s.formula().text()).collect(Collectors.joining(between));
    }
}
