package soundings.wording;

import java.util.Optional;
import java.util.Set;
import soundings.chemistry.Parameter;
import soundings.quantity.Amount;

/** {@code Alk 8.2}, {@code KH = 148 ppm CaCO3}, {@code po4 undetectable}: a test's name, its amount, and then the clause is over. */
final class TestPhrase {
    private static final Set<String> LEAD = Set.of(
            "tested",
            "test",
            "tests",
            "testing",
            "measured",
            "checked",
            "did",
            "done",
            "ran",
            "took",
            "quick",
            "at",
            "lunch",
            "lunchtime",
            "break",
            "school",
            "weekly",
            "daily",
            "day",
            "gemessen",
            "messung",
            "messungen",
            "messwerte",
            "werte",
            "getestet",
            "mesure",
            "mesures",
            "mesurees",
            "valeurs",
            "gemeten",
            "meting",
            "metingen",
            "waarden",
            "getest",
            "medido",
            "medidas",
            "valores",
            "heute",
            "vandaag",
            "hoy",
            "results",
            "result",
            "readings",
            "reading",
            "today",
            "now",
            "also",
            "the",
            "my",
            "water",
            "params",
            "parameters",
            "numbers",
            "levels",
            "this",
            "morning",
            "evening",
            ":",
            "-",
            "•",
            "and",
            "&",
            "+",
            "*",
            "=");
    private static final Set<String> BETWEEN = Set.of(
            "level",
            "levels",
            "is",
            "at",
            "now",
            "=",
            ":",
            "-",
            "reads",
            "reading",
            "measured",
            "tested",
            "result",
            "test",
            "of",
            "still",
            "today");
    private static final Set<String> WAS = Set.of("was", "were", "war", "waren", "era", "etait");
    private static final Set<String> LATER = Set.of("after", "afterwards", "later", "then", "nachher", "danach");
    private static final Set<String> NEARLY = Set.of(
            "<", ">", "~", "≈", "≤", "≥", "under", "below", "over", "above", "less", "more", "than", "about", "around",
            "nearly");
    private static final Set<String> SAID = Set.of(
            "came", "comes", "said", "says", "showed", "shows", "gave", "gives", "got", "read", "ergab", "zeigt",
            "zeigte");
    private static final Set<String> OUT = Set.of("out", "back", "in", "up", "as", "at", "about", "around", "of");
    private static final Set<String> NOW =
            Set.of("now", "today", "jetzt", "heute", "nu", "vandaag", "ahora", "hoy", "maintenant");
    private static final Set<String> TAIL = Set.of(
            "today", "now", "again", "still", "ok", "good", "fine", "steady", "stable", "?", "this", "morning",
            "evening", "am", "pm");
    private static final Set<String> NONE_FOUND = Set.of("undetectable", "undetected", "nd", "n.d.", "bdl");
    /** Names that are everyday words too; in running text they need a unit. */
    private static final Set<String> EVERYDAY = Set.of(
            "light",
            "light level",
            "salt",
            "salts",
            "buffer",
            "density",
            "gravity",
            "degrees",
            "acidity",
            "tan",
            "fer",
            "bor",
            "co",
            "se",
            "ni",
            "mo",
            "ta",
            "ec",
            "cr",
            "li",
            "na",
            "cl",
            "ba",
            "cond",
            "water temp");

    private TestPhrase() {}

    static Optional<Clauses.Found> at(Clauses text, int start) {
        int i = text.pass(start, LEAD, 6);
        return item(text, i)
                .filter(f -> over(text, f))
                .map(f -> new Clauses.Found(text.pass(f.end(), TAIL, 3), f.sure(), f.said()));
    }

    /** Whether a result begins right here. */
    static boolean leads(Clauses text, int i) {
        return text.test(i).isPresent() && item(text, i).isPresent();
    }

    /** Whether a word goes with a result and names nothing. */
    static boolean saysTest(String plainWord) {
        return LEAD.contains(plainWord) || BETWEEN.contains(plainWord) || TAIL.contains(plainWord);
    }

    /** A name and its amount, whatever stands behind. */
    private static Optional<Clauses.Found> item(Clauses text, int i) {
        return text.test(i)
                .flatMap(name ->
                        text.vocabulary.reference().findParameter(name.means()).flatMap(p -> amount(text, name, p)));
    }

    private static Optional<Clauses.Found> amount(Clauses text, Names.Match name, Parameter parameter) {
        int i = text.is(name.to(), ".") ? name.to() + 1 : name.to();
        int behind = i;
        Optional<Bracket> bracket = bracket(text, i, parameter).or(() -> unitBefore(text, behind, parameter));
        i = text.pass(bracket.map(Bracket::end).orElse(i), BETWEEN, 3);
        i = past(text, i) && !movedOn(text, i + 2) ? i + 1 : came(text, i);
        if (text.in(i, NONE_FOUND) || text.is(i, "not") && text.is(i + 1, "detected")) {
            WrittenAmount zero = new WrittenAmount(
                    new Amount.Exact(0),
                    Optional.empty(),
                    bracket.map(Bracket::unit).orElse(""),
                    true,
                    true,
                    "",
                    "",
                    0);
            return Clauses.Found.one(text.is(i, "not") ? i + 2 : i + 1, 0.9, new Said.Test(parameter, zero));
        }
        return i < text.size() && !text.stop(i) ? number(text, name, parameter, i, bracket) : Optional.empty();
    }

    /** {@code came out at 8.4}, {@code test said 415}: one past it, or {@code i} where nothing of the kind stands there. */
    private static int came(Clauses text, int i) {
        int verb = text.pass(i, SAID, 1);
        int out = verb > i ? text.pass(verb, OUT, 3) : i;
        return text.number(out) ? out : i;
    }

    /** {@code was 8.2}: in a note of a day it was so on that day. */
    static boolean past(Clauses text, int i) {
        int at = text.pass(i + 1, NEARLY, 2);
        return text.in(i, WAS) && text.number(at);
    }

    /** {@code alk was 7.4, now 8.2}, {@code alk was 7.4, 8.2 after}: another figure than the one that was follows. */
    private static boolean movedOn(Clauses text, int from) {
        for (int i = from; i < text.size() && !text.is(i, "\n"); i++) {
            boolean alone = text.number(i) && text.stop(i - 1) && (text.stop(i + 1) || text.in(i + 1, LATER));
            if (text.in(i, NOW) || alone) {
                return true;
            }
        }
        return false;
    }

    private record Bracket(String unit, int end) {}

    /** A unit in brackets behind the name: {@code Ca (ppm) 420}. */
    private static Optional<Bracket> bracket(Clauses text, int i, Parameter parameter) {
        if (!text.is(i, "(") && !text.is(i, "[")) {
            return Optional.empty();
        }
        for (int to = i + 2; to <= i + 7 && to < text.size(); to++) {
            if (text.is(to, ")") || text.is(to, "]")) {
                int end = to + 1;
                String inside = text.plain.substring(
                        text.tokens.get(i).to(), text.tokens.get(to).from());
                return text.vocabulary.findUnit(inside, parameter.id()).map(u -> new Bracket(u, end));
            }
        }
        return Optional.empty();
    }

    /** A unit between the name and the amount: {@code NO3 mg/l = 8.4}, {@code Phosphate ppm 0.06}. */
    private static Optional<Bracket> unitBefore(Clauses text, int i, Parameter parameter) {
        int end = i < text.size() ? unitEnd(text, i, parameter) : i;
        return end > i && (text.is(end, ":") || text.is(end, "=") || text.number(end))
                ? text.vocabulary
                        .findUnit(between(text, i, end), parameter.id())
                        .map(u -> new Bracket(u, end))
                : Optional.empty();
    }

    private static Optional<Clauses.Found> number(
            Clauses text, Names.Match name, Parameter parameter, int i, Optional<Bracket> bracket) {
        Optional<AmountScan.Found> scanned =
                AmountScan.inText(text.plain, text.tokens.get(i).from(), text.mark);
        if (scanned.isEmpty() || scanned.get().amount().marks().contains("+")) {
            return Optional.empty();
        }
        int end = scanned.get().end();
        int behind = text.tokenAt(end, i);
        int unitEnd = unitEnd(text, behind, parameter);
        String unit = unitEnd > behind
                ? text.vocabulary
                        .findUnit(between(text, behind, unitEnd), parameter.id())
                        .orElse("")
                : bracket.map(Bracket::unit).orElse("");
        String counted = basis(text, name, unit, parameter);
        boolean bare = unit.isEmpty() && (name.key().length() == 1 || EVERYDAY.contains(name.key()));
        boolean otherUnit = unit.isEmpty() && text.volume(behind).isPresent();
        Said test = new Said.Test(parameter, scanned.get().amount().withUnit(counted, ""));
        double sure = scanned.get().amount().amount() instanceof Amount.Between ? 0.75 : unit.isEmpty() ? 0.85 : 0.95;
        return bare || otherUnit ? Optional.empty() : Clauses.Found.one(unitEnd, sure, test);
    }

    /** The unit with the substance the name counts: {@code PO4-P 12 ppb} is {@code ppb p}. */
    private static String basis(Clauses text, Names.Match name, String unit, Parameter parameter) {
        if (unit.isEmpty()) {
            return text.vocabulary
                    .findUnit(between(text, name.from(), name.to()), parameter.id())
                    .filter(u -> HeaderUnit.otherBasis(text.vocabulary, parameter.id(), u))
                    .orElse("");
        }
        Token last = text.tokens.get(name.to() - 1);
        return text.vocabulary
                .findUnit(Plain.of(unit) + " " + last.text(), parameter.id())
                .filter(u -> HeaderUnit.ELEMENTS.contains(last.text())
                        && !text.vocabulary.sameScale(parameter.id(), u, unit))
                .orElse(unit);
    }

    private static String between(Clauses text, int from, int to) {
        return text.plain.substring(
                text.tokens.get(from).from(), text.tokens.get(to - 1).to());
    }

    /** One past the longest unit of this parameter that begins here; a point behind it ends the sentence. */
    private static int unitEnd(Clauses text, int from, Parameter parameter) {
        int best = from;
        for (int to = from + 1; to <= Math.min(from + 8, text.size()) && !text.is(to - 1, "\n"); to++) {
            boolean known = text.vocabulary
                    .findUnit(between(text, from, to), parameter.id())
                    .isPresent();
            best = known && !text.is(to - 1, ".") ? to : best;
        }
        return best;
    }

    /** Nothing follows that could change the sense: the clause ends, or the next test begins. */
    private static boolean over(Clauses text, Clauses.Found found) {
        int i = text.pass(found.end(), TAIL, 3);
        if (text.is(i, "/") && text.number(i + 1)) {
            return false;
        }
        if (text.stop(i) || item(text, i).isPresent()) {
            return !otherSense(text, i);
        }
        return text.and(i)
                && (found.sure() > 0.9
                        || item(text, text.pass(i, LEAD, 3))
                                .filter(f -> text.stop(f.end())
                                        || text.and(f.end())
                                        || item(text, f.end()).isPresent())
                                .isPresent());
    }

    /** In brackets behind: {@code Ca 420 (target)} is no result, nor is {@code Ca 420 (last week)}. */
    private static boolean otherSense(Clauses text, int i) {
        return (text.is(i, "(") || text.is(i, ",")) && Hedges.lone(text, i + 1);
    }
}
