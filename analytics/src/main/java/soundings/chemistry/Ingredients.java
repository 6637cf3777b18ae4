package soundings.chemistry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Substances weighed into a volume. */
final class Ingredients {
    private static final String NUMBER = "(\\d[\\d.,]*)";
    private static final String MASS = "\\s*(kg|mg|ug|mcg|g|grams?|oz|lbs?)\\b";
    private static final Pattern PURITY =
            Pattern.compile("(?i)[(,]?\\s*(?:at\\s+)?" + NUMBER + "\\s*%\\s*(?:pure|purity)?\\)?");
    private static final Pattern NAME_FIRST = Pattern.compile("(?i)^(.+?)\\s+" + NUMBER + MASS + "$");
    private static final Pattern AMOUNT_FIRST = Pattern.compile("(?i)^" + NUMBER + MASS + "\\s*(?:of\\s+)?(.+)$");
    private static final Pattern STRENGTH_FIRST =
            Pattern.compile("(?i)^" + NUMBER + MASS + "\\s*/\\s*(ml|l)\\s+(?:of\\s+)?(.+)$");
    private static final Pattern STRENGTH_LAST = Pattern.compile("(?i)^(.+?)\\s+" + NUMBER + MASS + "\\s*/\\s*(ml|l)$");
    private static final Map<String, Double> GRAMS = Map.of(
            "kg",
            1000.0,
            "g",
            1.0,
            "gram",
            1.0,
            "grams",
            1.0,
            "mg",
            1e-3,
            "ug",
            1e-6,
            "mcg",
            1e-6,
            "oz",
            28.349523125,
            "lb",
            453.59237,
            "lbs",
            453.59237);

    private final Reference reference;
    private final Shelf shelf;

    Ingredients(Reference reference) {
        this.reference = reference;
        this.shelf = new Shelf(reference.substances());
    }

    StockSolution solution(String written, String[] parts, double millilitres, List<String> assumptions) {
        List<Weighed> weighed = new ArrayList<>();
        for (String part : parts) {
            weighed.add(weighed(part, assumptions));
        }
        return solution(written, weighed, millilitres, assumptions);
    }

    /** {@code 80 g/L NaHCO3}: of a substance, not of a parameter. */
    Optional<StockSolution> ofStrength(String written, String text, List<String> assumptions) {
        Matcher first = STRENGTH_FIRST.matcher(text);
        Matcher last = STRENGTH_LAST.matcher(text);
        if (first.matches()) {
            return Optional.of(
                    ofStrength(written, first.group(4), first.group(1), first.group(2), first.group(3), assumptions));
        }
        return last.matches()
                ? Optional.of(
                        ofStrength(written, last.group(1), last.group(2), last.group(3), last.group(4), assumptions))
                : Optional.empty();
    }

    private StockSolution ofStrength(
            String written, String name, String number, String mass, String volume, List<String> assumptions) {
        Weighed one = new Weighed(shelf.find(name, assumptions), grams(number, mass));
        return solution(written, List.of(one), Volumes.millilitres(volume, assumptions), assumptions);
    }

    private Weighed weighed(String part, List<String> assumptions) {
        Matcher purity = PURITY.matcher(part);
        double share = purity.find() ? Numbers.read(purity.group(1)) / 100 : 1;
        String bare = purity.replaceFirst(" ").strip();
        Matcher first = AMOUNT_FIRST.matcher(bare);
        Matcher last = NAME_FIRST.matcher(bare);
        if (last.matches()) {
            return new Weighed(shelf.find(last.group(1), assumptions), share * grams(last.group(2), last.group(3)));
        }
        if (first.matches()) {
            return new Weighed(shelf.find(first.group(3), assumptions), share * grams(first.group(1), first.group(2)));
        }
        throw new Unreadable("'" + part.strip() + "' should be a substance and its weight, as \"KI 5 g\"");
    }

    private static double grams(String number, String unit) {
        Double one = GRAMS.get(Names.fold(unit));
        if (one == null) {
            throw new Unreadable("'" + unit + "' is not a weight; g, mg, kg, oz and lb are");
        }
        return Numbers.read(number) * one;
    }

    private StockSolution solution(String written, List<Weighed> all, double millilitres, List<String> assumptions) {
        if (!(millilitres > 0)) {
            throw new Unreadable("a solution has a volume above nothing");
        }
        Map<String, Double> rises = new HashMap<>();
        for (Weighed one : all) {
            double mmolPerMl = one.grams() * 1000 / one.salt().formula().molarMass(elements()) / millilitres;
            counts(one.salt())
                    .forEach((parameter, count) ->
                            rises.merge(parameter.id(), inCanonicalUnit(parameter, mmolPerMl * count), Double::sum));
        }
        List<String> cautions = all.stream()
                .map(w -> w.salt().caution())
                .filter(c -> !c.isEmpty())
                .toList();
        return new StockSolution(written, rises, true, cautions, assumptions);
    }

    /**
     * What to mind with a solution of which only the effect is known: what holds for at least half of the substances that have this
     * effect, since nobody knows which it is.
     */
    List<String> likelyCautions(Parameter raised) {
        List<Salt> salts = reference.substances().salts().stream()
                .filter(salt -> count(salt, raised) > 0)
                .toList();
        return salts.stream()
                .map(Salt::caution)
                .filter(caution -> !caution.isEmpty())
                .distinct()
                .filter(caution -> 2
                                * salts.stream()
                                        .filter(s -> s.caution().equals(caution))
                                        .count()
                        >= salts.size())
                .toList();
    }

    /** One mmol in a litre, or one meq of alkalinity. */
    private double inCanonicalUnit(Parameter parameter, double mmol) {
        return reference.findScale(parameter, "mmol/L").orElseThrow().canonical(mmol);
    }

    /** How much of each parameter a formula unit brings. */
    private Map<Parameter, Double> counts(Salt salt) {
        Map<Parameter, Double> counts = new HashMap<>();
        for (Parameter parameter : reference.parameters()) {
            double count = count(salt, parameter);
            if (count != 0) {
                counts.put(parameter, count);
            }
        }
        return counts;
    }

    private double count(Salt salt, Parameter parameter) {
        if (parameter.id().equals("alkalinity")) {
            return salt.equivalents();
        }
        return salt.countsFor().getOrDefault(parameter.id(), ofElement(salt.formula(), parameter));
    }

    /** Parameters that count one element whatever its form; a nutrient or a toxin counts one form of it. */
    private double ofElement(Formula formula, Parameter parameter) {
        boolean anyForm = parameter.kind() == Parameter.Kind.ION || parameter.kind() == Parameter.Kind.TRACE;
        Formula counted = reference.substances().counted().get(parameter.id());
        if (!anyForm || counted == null || counted.atoms().size() != 1) {
            return 0;
        }
        return formula.count(counted.atoms().keySet().iterator().next());
    }

    private Elements elements() {
        return reference.substances().elements();
    }

    private record Weighed(Salt salt, double grams) {}
}
