package soundings.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.TreeSet;
import soundings.chemistry.Creep;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.chemistry.StockSolution;

/** Strengths of stock solutions in words and figures, four digits each. */
final class StockText {
    private static final String NAMES_SAY_NOTHING =
            "A name does not tell the strength: the same name is sold many times stronger or weaker. Go by the recipe or the label's figures.";

    private StockText() {}

    static List<String> lines(List<StockSolution> solutions, Reference reference) {
        List<String> lines = new ArrayList<>();
        solutions.forEach(s -> lines.addAll(strengths(s, reference)));
        lines.addAll(comparisons(solutions, reference));
        if (!solutions.isEmpty()) {
            lines.add(NAMES_SAY_NOTHING);
        }
        solutions.stream().flatMap(s -> s.cautions().stream()).distinct().forEach(c -> lines.add("Caution: " + c));
        return lines;
    }

    private static List<String> strengths(StockSolution solution, Reference reference) {
        List<String> lines = new ArrayList<>();
        lines.add(solution.written());
        for (Parameter parameter : reference.parameters()) {
            solution.risePerMlInOneLitre(parameter)
                    .ifPresent(r -> lines.add(strength(parameter, r, solution, reference)));
        }
        solution.assumptions().forEach(a -> lines.add("  (" + a + ")"));
        lines.add("");
        return lines;
    }

    private static String strength(Parameter parameter, double rise, StockSolution solution, Reference reference) {
        double inHundredLitres = solution.rise(parameter, 1, 100);
        return String.format(
                Locale.ROOT,
                "  %-11s %-15s 1 mL in 100 L: %s %s%s",
                parameter.id(),
                perMl(parameter, rise, reference),
                signed(inHundredLitres),
                parameter.unit(),
                small(parameter, inHundredLitres));
    }

    /** Alkalinity by the milliequivalent, all else by mass: 1 mL in 1 L raises by what a mL holds. */
    private static String perMl(Parameter parameter, double rise, Reference reference) {
        if (parameter.id().equals("alkalinity")) {
            return number(reference.findScale(parameter, "meq/L").orElseThrow().written(rise)) + " meq/mL";
        }
        return number(reference.findScale(parameter, "mg/L").orElseThrow().written(rise)) + " mg/mL";
    }

    private static String small(Parameter parameter, double rise) {
        boolean inMilligrams = parameter.unit().equals("mg/L") && Math.abs(rise) < 0.1;
        return inMilligrams ? " (" + signed(rise * 1000) + " µg/L)" : "";
    }

    private static List<String> comparisons(List<StockSolution> solutions, Reference reference) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < solutions.size(); i++) {
            for (int j = i + 1; j < solutions.size(); j++) {
                lines.addAll(comparison(solutions.get(i), solutions.get(j), reference));
            }
        }
        if (!lines.isEmpty()) {
            lines.add(0, "Volumes that do the same");
            lines.add("");
        }
        return lines;
    }

    private static List<String> comparison(StockSolution one, StockSolution other, Reference reference) {
        List<String> lines = new ArrayList<>();
        for (String id : new TreeSet<>(one.risePerMl().keySet())) {
            Parameter parameter = reference.parameter(id);
            OptionalDouble millilitres = one.millilitresEqualToOneOf(other, parameter);
            millilitres.ifPresent(
                    ml -> lines.add("  " + id + ": 1 mL of \"" + other.written() + "\" = " + number(ml) + " mL of \""
                            + one.written() + "\"; 1 mL of the latter = " + number(1 / ml) + " mL of the former"));
        }
        return lines;
    }

    static List<String> creep(Creep creep) {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("Left in the tank after 30 days, water changes aside");
        lines.add("  sodium " + signed(creep.sodium()) + " mg/L, chloride " + signed(creep.chloride())
                + " mg/L, sulfate " + signed(creep.sulfate()) + " mg/L: salinity " + signed(creep.salinity()) + " psu");
        creep.notCounted().forEach(n -> lines.add("  not counted, its other ions are not known: " + n));
        return lines;
    }

    private static String signed(double value) {
        return value > 0 ? "+" + number(value) : number(value);
    }

    /** Four digits, no exponent, no trailing zeros, a decimal point. */
    private static String number(double value) {
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(4));
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
