package soundings.wording;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import soundings.chemistry.Alias;
import soundings.quantity.Amount;
import soundings.sheet.Value;

/** Reads the text of a cell as an amount: a number with its bounds, doubts, unit and marks, or why it is none. */
public final class Amounts {
    private static final Set<String> DITTO = Set.of(
            "\"",
            "\"\"",
            "''",
            "'",
            "do.",
            "do",
            "ditto",
            "idem",
            "id.",
            ",,",
            "-\"-",
            "- \" -",
            "dito",
            "dto.",
            "dto",
            "same",
            "same as above",
            "as above",
            "wie oben");
    private static final Set<String> NOTHING = Set.of(
            "",
            "-",
            "--",
            "---",
            "/",
            "?",
            "??",
            "???",
            "x",
            "n/a",
            "na",
            "n.a.",
            "n.a",
            "none",
            "nil",
            "null",
            ".",
            "...",
            "…",
            "*",
            "_",
            "tbd",
            "tbc",
            "pending",
            "skipped",
            "skip",
            "forgot",
            "forgotten",
            "missed",
            "not tested",
            "not done",
            "no test",
            "not measured",
            "untested",
            "no reading",
            "no data",
            "empty",
            "out of reagent",
            "#n/a",
            "k.a.");
    private static final Set<String> UNDETECTED = Set.of(
            "nd",
            "n.d.",
            "n.d",
            "n/d",
            "bdl",
            "lod",
            "<lod",
            "< lod",
            "<mdl",
            "not detected",
            "not detectable",
            "undetectable",
            "undetected",
            "undet",
            "non detect",
            "none detected",
            "below detection",
            "below detection limit",
            "nicht nachweisbar",
            "n.n.",
            "nn",
            "non detecte",
            "no detectado",
            "niet aantoonbaar",
            "clear");
    private static final Set<String> STEPS = Set.of(
            "titrant",
            "reagent",
            "drop",
            "drops",
            "tropfen",
            "gtt",
            "gouttes",
            "gotas",
            "druppels",
            "turns",
            "clicks",
            "scoops",
            "bars");
    /** {@code (2nd test)}, {@code (2. Messung)}, {@code (2e test)}: once more, no other result. */
    private static final Pattern ORDINAL = Pattern.compile("(?<=[( ])[2-9](nd|rd|th|\\.|e|eme|a|o) ?(?=\\p{L})");

    private static final Pattern WHEN = Pattern.compile("(?:@|at |um |[(]@?)? *([0-9][^()]{0,11})[)]?");
    private static final int LONGEST = 200;

    private Amounts() {}

    /** Whether a word, in its plain form, counts a kit's own steps. */
    public static boolean step(String plain) {
        return STEPS.contains(plain);
    }

    /** @param mark as decided for the column, see {@link DecimalMarks} */
    public static AmountText read(Value value, DecimalMark mark, Vocabulary vocabulary) {
        return value.match(
                text -> read(text.text(), mark, vocabulary),
                numeric -> number(numeric.number()),
                moment -> new AmountText.Unreadable("a date or time stands where an amount belongs"),
                flag -> new AmountText.Unreadable("a yes or no stands where an amount belongs"),
                fault -> new AmountText.Unreadable("the cell holds the error " + fault.code()));
    }

    private static AmountText number(double number) {
        if (!Double.isFinite(number)) {
            return new AmountText.Unreadable("not a finite number");
        }
        Amount exact = new Amount.Exact(number);
        return new AmountText.Written(
                new WrittenAmount(exact, Optional.empty(), "", false, false, "", "", decimals(number)));
    }

    /** Digits behind the point of the shortest text that gives this number again. */
    private static int decimals(double number) {
        return Math.max(0, BigDecimal.valueOf(number).stripTrailingZeros().scale());
    }

    public static AmountText read(String text, DecimalMark mark, Vocabulary vocabulary) {
        String plain = Plain.of(text).strip();
        if (NOTHING.contains(plain)
                || vocabulary.find(Alias.Kind.NOTHING, plain).isPresent()) {
            return new AmountText.Nothing(text.strip(), false);
        }
        if (DITTO.contains(plain)) {
            return new AmountText.Nothing(text.strip(), true);
        }
        if (plain.length() > LONGEST) {
            return new AmountText.Unreadable("a whole text stands where an amount belongs");
        }
        Optional<String> slip = digits(plain) || plain.startsWith("o") ? Lookalikes.corrected(plain) : Optional.empty();
        return slip.<AmountText>map(
                        s -> new AmountText.Unreadable("a letter stands among the figures; " + s + " may be meant"))
                .or(() -> undetected(plain))
                .orElseGet(() -> amounts(plain, mark, vocabulary));
    }

    /** Not detected: below the kit's first step, wherever that lies; below zero is never claimed. */
    private static Optional<AmountText> undetected(String plain) {
        int open = plain.indexOf('(');
        String head = (open > 0 ? plain.substring(0, open) : plain).strip();
        if (!UNDETECTED.contains(head)) {
            return Optional.empty();
        }
        String note = open > 0 ? plain.substring(open) : "";
        WrittenAmount zero = new WrittenAmount(new Amount.Exact(0), Optional.empty(), "", true, true, "", note, 0);
        return Optional.of(new AmountText.Written(zero));
    }

    private static AmountText amounts(String plain, DecimalMark mark, Vocabulary vocabulary) {
        Optional<AmountScan.Found> found = AmountScan.at(plain, 0, mark);
        if (found.isEmpty()) {
            return new AmountText.Unreadable(digits(plain) ? "the number cannot be made out" : "no number stands here");
        }
        String rest = plain.substring(found.get().end()).strip();
        List<WrittenAmount> all = new ArrayList<>(List.of(found.get().amount()));
        return withRest(all, rest, mark, vocabulary);
    }

    private static AmountText withRest(List<WrittenAmount> all, String rest, DecimalMark mark, Vocabulary vocabulary) {
        int slash = secondAmount(rest);
        String behind = slash < 0 ? rest : rest.substring(0, slash).strip();
        Optional<WrittenAmount> last = withUnit(all.remove(all.size() - 1), behind, vocabulary);
        if (last.isEmpty()) {
            return new AmountText.Unreadable(
                    digits(behind.substring(unitEnd(behind, vocabulary)))
                            ? "more than one number stands here"
                            : "the words beside it say that it is something else");
        }
        all.add(last.get());
        if (slash >= 0) {
            return next(all, rest.substring(slash + 1).strip(), mark, vocabulary);
        }
        return all.size() > 1 ? new AmountText.Several(all) : one(last.get(), behind);
    }

    private static AmountText next(List<WrittenAmount> all, String plain, DecimalMark mark, Vocabulary vocabulary) {
        Optional<AmountScan.Found> found = AmountScan.at(plain, 0, mark);
        if (found.isEmpty() || all.size() > 1) {
            return new AmountText.Unreadable("more than one number stands here");
        }
        all.add(found.get().amount());
        return withRest(all, plain.substring(found.get().end()).strip(), mark, vocabulary);
    }

    /** Where a slash or bar parts two amounts: a figure or a bound stands behind it. */
    private static int secondAmount(String rest) {
        for (int i = 0; i < rest.length(); i++) {
            if ("/|;&".indexOf(rest.charAt(i)) >= 0
                    && AmountScan.at(rest, i + 1, DecimalMark.POINT).isPresent()) {
                return i;
            }
        }
        return -1;
    }

    private static AmountText one(WrittenAmount amount, String behind) {
        return STEPS.contains(behind)
                ? new AmountText.Steps(amount.withUnit("", ""), behind)
                : new AmountText.Written(amount);
    }

    /** Splits what stands behind a number into unit and note; empty where another number hides in it. */
    static Optional<WrittenAmount> withUnit(WrittenAmount amount, String behind, Vocabulary vocabulary) {
        WrittenAmount doubted = behind.contains("?") ? amount.doubtful() : amount;
        String rest = behind.replace("?", "").strip();
        if (rest.isEmpty()) {
            return Optional.of(doubted);
        }
        int end = unitEnd(rest, vocabulary);
        String unit = rest.substring(0, end).strip();
        String note = rest.substring(end).strip();
        if (timeOnly(note)) {
            return Optional.of(doubted.withUnit(spelling(unit, vocabulary), ""));
        }
        return digits(ORDINAL.matcher(note).replaceAll("")) || otherwise(note, vocabulary)
                ? Optional.empty()
                : Optional.of(doubted.withUnit(spelling(unit, vocabulary), marksOnly(note) ? "" : note));
    }

    /** {@code @ 9am}, {@code (08:30)}: when it was tested, and nothing else. */
    private static boolean timeOnly(String note) {
        Matcher when = WHEN.matcher(note);
        return when.matches()
                && Dates.read(when.group(1))
                        .filter(d -> d.readings().isEmpty() && d.time().isPresent())
                        .isPresent();
    }

    /** Words behind a number that make it an aim, a limit, or the water of a tank that is named. */
    private static boolean otherwise(String note, Vocabulary vocabulary) {
        List<Token> words = note.isEmpty() ? List.of() : Tokens.of(note);
        return words.stream().anyMatch(w -> Hedges.aim(w.text()))
                || !Names.all(words, vocabulary::findTank).isEmpty();
    }

    private static boolean marksOnly(String note) {
        return note.chars().allMatch(c -> "-*!#.,;:^†‡)(".indexOf(c) >= 0 || c == ' ');
    }

    /** One past the longest known unit at the head of the text; zero when there is none. */
    static int unitEnd(String rest, Vocabulary vocabulary) {
        int best = 0;
        int words = 0;
        for (Token token : Tokens.of(rest)) {
            if (words++ > 8) {
                break;
            }
            String head = rest.substring(0, token.to());
            boolean known =
                    vocabulary.knowsUnit(head) || VolumeUnit.of(head.strip()).isPresent();
            best = known ? token.to() : best;
        }
        return best;
    }

    private static String spelling(String unit, Vocabulary vocabulary) {
        return vocabulary.units(unit).stream()
                .map(Vocabulary.Unit::spelling)
                .findFirst()
                .orElse(unit);
    }

    private static boolean digits(String plain) {
        return plain.chars().anyMatch(c -> c >= '0' && c <= '9');
    }
}
