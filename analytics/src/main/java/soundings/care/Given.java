package soundings.care;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import soundings.care.Plans.Treatment;
import soundings.history.Note;

/**
 * A dose of a medicine.
 *
 * @param milligrams what went in; empty where it is not known by weight
 * @param written the amount as the keeper has it, such as {@code 500 mg}
 * @param assumed the note names no amount, so it is the one in the setup
 * @param told whether a word says that it was given; otherwise a weight in a note of a treatment
 * @param place where it stands
 */
public record Given(
        LocalDate on, OptionalDouble milligrams, String written, boolean assumed, boolean told, String place) {
    private static final Pattern AMOUNT = Pattern.compile(
            "(?<![\\d.,])(\\d+(?:[.,]\\d+)?)\\s*(mg|milligrams?|g|grams?|ml|drops?|gramm|tropfen|gouttes?|gramos?|gotas?|gram|druppels?)\\b(?!\\s*/\\s*l)",
            Pattern.CASE_INSENSITIVE);

    /**
     * The dose a note tells of. Where the medicine is not known, a weight in milligrams is one; grams are only where the note speaks of
     * the treatment, as salts are weighed out in them too.
     */
    static Optional<Given> of(Note note, Treatment plan, OptionalDouble litres, Vocabulary words) {
        Optional<Given> told = read(note, plan, litres, words);
        boolean any = !plan.medicine().isEmpty() || words.speaksOfTreatment(note);
        Optional<Given> weighed = plan.medicine().isEmpty() ? weighed(note, litres, words) : Optional.empty();
        return told.filter(g -> any || g.isInMilligrams()).or(() -> weighed.filter(g -> any || g.isInMilligrams()));
    }

    /** Reads a clause of a note; a clause that only speaks of a dose is none. */
    private static Optional<Given> read(Note note, Treatment plan, OptionalDouble litres, Vocabulary words) {
        for (String clause : words.clauses.split(note.text())) {
            String folded = Vocabulary.folded(clause);
            boolean named = !plan.medicine().isEmpty() && folded.contains(Vocabulary.folded(plan.medicine()));
            Matcher amount = AMOUNT.matcher(clause);
            boolean weighed = amount.find();
            boolean given = words.given.matcher(folded).find() || (named && weighed);
            if (given && !words.notGiven.matcher(folded).find()) {
                return Optional.of(
                        weighed
                                ? new Given(
                                        note.on(),
                                        milligrams(amount.group(1), amount.group(2), litres),
                                        amount.group().strip(),
                                        false,
                                        true,
                                        note.at().place())
                                : planned(note.on(), plan, litres, note.at().place()));
            }
        }
        return Optional.empty();
    }

    /** What a note of a treatment weighs out in grams or milligrams, where it does not say what was done with it. */
    private static Optional<Given> weighed(Note note, OptionalDouble litres, Vocabulary words) {
        Matcher amount = AMOUNT.matcher(note.text());
        boolean plain = !words.notGiven.matcher(Vocabulary.folded(note.text())).find();
        return plain && amount.find()
                ? Optional.of(new Given(
                                note.on(),
                                milligrams(amount.group(1), amount.group(2), litres),
                                amount.group().strip(),
                                false,
                                false,
                                note.at().place()))
                        .filter(g -> g.milligrams().isPresent())
                : Optional.empty();
    }

    private boolean isInMilligrams() {
        String unit = written.toLowerCase(Locale.ROOT);
        return unit.endsWith("mg") || unit.contains("milligram");
    }

    /** The amount the setup names. */
    static Given planned(LocalDate on, Treatment plan, OptionalDouble litres, String place) {
        String written =
                plan.amount().isPresent() ? plain(plan.amount().getAsDouble()) + " " + plan.unit() : "amount not known";
        OptionalDouble milligrams = plan.amount().isPresent()
                ? milligrams(plan.amount().getAsDouble(), plan.unit(), litres)
                : OptionalDouble.empty();
        return new Given(on, milligrams, written.strip(), true, true, place);
    }

    private static OptionalDouble milligrams(String digits, String unit, OptionalDouble litres) {
        if (digits.matches("\\d{1,3}[.,]\\d{3}")) {
            return OptionalDouble.empty();
        }
        return milligrams(Double.parseDouble(digits.replace(',', '.')), unit, litres);
    }

    /** Weights only; a volume says nothing without the strength of what is in it. */
    private static OptionalDouble milligrams(double amount, String unit, OptionalDouble litres) {
        String folded = unit.toLowerCase(Locale.ROOT).replaceAll("[\\s.]", "");
        if (folded.equals("mg/l") || folded.equals("ppm")) {
            return litres.isPresent() ? OptionalDouble.of(amount * litres.getAsDouble()) : litres;
        }
        if (folded.equals("mg") || folded.startsWith("milligram")) {
            return OptionalDouble.of(amount);
        }
        return folded.equals("g") || folded.startsWith("gram")
                ? OptionalDouble.of(amount * 1000)
                : OptionalDouble.empty();
    }

    private static String plain(double number) {
        return java.math.BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
