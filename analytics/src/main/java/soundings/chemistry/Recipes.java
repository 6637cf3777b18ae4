package soundings.chemistry;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads how strong a solution is, written in one of three ways:
 *
 * <ul>
 *   <li>by weight: {@code KI 5 g in 1 L}, {@code I2 5 g + KI 10 g in 100 mL}, {@code CaCl2.2H2O 150 g 97 % in 1 L}
 *   <li>by effect, as labels have it: {@code 1 mL in 100 L raises alkalinity 0.1 dKH}
 *   <li>by strength, as labels or an assay have it: {@code 20 mg/mL iodine}, {@code NaHCO3 80 g/L}
 * </ul>
 *
 * A bare name is never a strength. Per cent are not taken: of weight or of volume, the label must say.
 */
public final class Recipes {
    static final String FORMS =
            "write it as \"KI 5 g in 1 L\", \"1 mL in 100 L raises alkalinity 0.1 dKH\" or \"20 mg/mL iodine\"";
    private static final String NUMBER = "(\\d[\\d.,]*)";
    private static final String VOLUME = "\\s*([A-Za-z][A-Za-z. ]*?)";
    private static final String WATER =
            "(?:\\s+(?:of\\s+)?(?:(?:ro|di|ro/di|rodi|fresh|pure|distilled|deioni[sz]ed)\\s+)?water)";
    private static final Pattern PREFIX = Pattern.compile("(?i)^(label|assay|claim|recipe)\\s*:\\s*");
    private static final Pattern EFFECT = Pattern.compile("(?i)^" + NUMBER + VOLUME + "\\s+(?:in|per|to|into|for)\\s+"
            + NUMBER + VOLUME + "\\s+(?:of \\w+ )?(?:raises?|adds?|increases?|gives?)\\s+(.+)$");
    private static final Pattern WEIGHT = Pattern.compile(
            "(?i)^(.+?)\\s*(?:\\bdissolved\\s+)?(?:\\bin\\b|\\bper\\b|\\bto make\\b|\\bmade up to\\b|/)\\s*" + NUMBER
                    + "?" + VOLUME + WATER + "?$");
    private static final Pattern AMOUNT_FIRST =
            Pattern.compile("(?i)^" + NUMBER + "\\s*([^\\d\\s]\\S*)\\s+(?:of\\s+|as\\s+)?(.+)$");
    private static final Pattern NAME_FIRST =
            Pattern.compile("(?i)^(.+?)\\s+(?:by\\s+)?" + NUMBER + "\\s*(\\S+(?:\\s+(?:as\\s+)?\\p{Alpha}\\w*)?)$");
    private static final String AND = "\\s*[+&;]\\s*|\\s+and\\s+|,\\s+";

    private final Reference reference;
    private final Ingredients ingredients;
    private final List<String> assumptions = new ArrayList<>();

    private Recipes(Reference reference) {
        this.reference = reference;
        this.ingredients = new Ingredients(reference);
    }

    /** Never throws for what a keeper writes. */
    public static RecipeReading read(String written, Reference reference) {
        try {
            return new RecipeReading.Understood(new Recipes(reference).solution(written));
        } catch (Unreadable e) {
            return new RecipeReading.NotUnderstood(written, e.why());
        }
    }

    private StockSolution solution(String written) {
        String text = PREFIX.matcher(
                        Normalizer.normalize(written, Normalizer.Form.NFKC).strip())
                .replaceFirst("");
        if (text.matches(".*\\d\\s*%.*") && !text.matches(".*\\d\\s*k?g\\b.*")) {
            throw new Unreadable("per cent can be grams in 100 g or in 100 mL: write grams per litre");
        }
        Matcher effect = EFFECT.matcher(text);
        if (effect.matches()) {
            return byEffect(written, effect);
        }
        Matcher weight = WEIGHT.matcher(text);
        if (weight.matches()
                && Volumes.isVolume(weight.group(3))
                && weight.group(1).matches("(?i).*\\d\\s*(k?g|mg|ug|oz|lbs?|grams?)\\b.*")) {
            return byWeight(written, weight);
        }
        return byStrength(written, text);
    }

    private StockSolution byEffect(String written, Matcher m) {
        double millilitres = Numbers.read(m.group(1)) * volume(m.group(2));
        double litres = Numbers.read(m.group(3)) * volume(m.group(4)) / 1000;
        Map<String, Double> rises = new HashMap<>();
        for (String part : m.group(5).split(AND)) {
            Measured claim = measured(part).orElseThrow(() -> unclear(part));
            rises.put(claim.parameter().id(), claim.canonical() * litres / millilitres);
        }
        return claimed(written, rises);
    }

    private StockSolution claimed(String written, Map<String, Double> rises) {
        List<String> cautions = rises.keySet().stream()
                .sorted()
                .flatMap(id -> ingredients.likelyCautions(reference.parameter(id)).stream())
                .toList();
        return new StockSolution(written, rises, false, cautions, assumptions);
    }

    private StockSolution byWeight(String written, Matcher m) {
        double count = m.group(2) == null ? 1 : Numbers.read(m.group(2));
        double millilitres = count * volume(m.group(3));
        assumptions.add("made up to "
                + m.group(0)
                        .substring(m.end(1))
                        .replaceFirst("(?i)^\\s*(in|per|to make|made up to|/)\\s*", "")
                        .replaceFirst("^(?=\\p{L})", "1 ")
                + " in all");
        return ingredients.solution(written, m.group(1).split(AND), millilitres, assumptions);
    }

    /** A strength is either so much of a substance in a volume, or the concentration of a parameter in the bottle itself. */
    private StockSolution byStrength(String written, String text) {
        Map<String, Double> rises = new HashMap<>();
        for (String part : text.split(AND)) {
            Optional<Measured> strength = measured(part);
            if (strength.isEmpty()) {
                return ingredients
                        .ofStrength(written, text, assumptions)
                        .orElseThrow(() -> new Unreadable(missing(text)));
            }
            rises.put(strength.get().parameter().id(), strength.get().canonical() / 1000);
        }
        return claimed(written, rises);
    }

    /** {@code alkalinity 0.1 dKH} or {@code 0.1 dKH alkalinity}. */
    private Optional<Measured> measured(String part) {
        Matcher amountFirst = AMOUNT_FIRST.matcher(part.strip());
        if (amountFirst.matches()) {
            return measured(amountFirst.group(3), amountFirst.group(1), amountFirst.group(2));
        }
        Matcher nameFirst = NAME_FIRST.matcher(part.strip());
        return nameFirst.matches()
                ? measured(nameFirst.group(1), nameFirst.group(2), nameFirst.group(3))
                : Optional.empty();
    }

    private Optional<Measured> measured(String name, String number, String unit) {
        Optional<Parameter> parameter = reference.findParameterNamed(name).filter(Parameter::balances);
        return parameter
                .flatMap(p -> scaleOf(p, unit))
                .map(s -> new Measured(s.scale().parameter(), s.scale().canonical(Numbers.read(number) * s.times())));
    }

    /** The parameter's scales are by the litre; a strength may be by the mL. */
    private Optional<Scaled> scaleOf(Parameter parameter, String unit) {
        Optional<Scale> direct = reference.findScale(parameter, unit);
        if (direct.isPresent()) {
            return direct.map(s -> new Scaled(s, 1));
        }
        String byLitre = unit.replaceFirst("(?i)/\\s*ml\\b", "/L");
        return byLitre.equals(unit)
                ? Optional.empty()
                : reference.findScale(parameter, byLitre).map(s -> new Scaled(s, 1000));
    }

    private double volume(String unit) {
        return Volumes.millilitres(unit, assumptions);
    }

    /** What a recipe lacks that is neither a weight in a volume nor a strength. */
    private String missing(String text) {
        boolean weight = text.matches("(?i).*\\d\\s*(k?g|mg|ug|mcg|oz|lbs?|grams?)\\b.*");
        boolean volume = text.matches("(?i).*\\d\\s*(m?l|litres?|liters?|gallons?|gal)\\b.*|.*/\\s*m?l\\b.*");
        String what = weight && volume
                ? "what is dissolved is not known by this name"
                : weight
                        ? "the volume it is made up to is missing"
                        : volume
                                ? "the weight of what is dissolved is missing"
                                : "weight and volume are missing, and a name does not tell the strength";
        return what + "; " + FORMS;
    }

    private static Unreadable unclear(String part) {
        return new Unreadable("'" + part.strip() + "' is not clear: " + FORMS);
    }

    private record Measured(Parameter parameter, double canonical) {}

    private record Scaled(Scale scale, double times) {}
}
