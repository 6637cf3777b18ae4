package soundings.wording;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import soundings.chemistry.Alias;

/**
 * A dose in free words: {@code now on 50 ml/day of blue mix}, {@code gave 5 ml blue mix one off}. One volume stands in the
 * clause, perhaps how often, and one name; every other word must be one that changes nothing, else the clause stays unread.
 */
final class DosePhrase {
    private static final int LONGEST_NAME = 4;
    /** Words of a clause that may still be understood whole. */
    private static final int LONGEST = 25;

    /** Words beside a dose that say neither what nor how much. */
    private static final Set<String> FILL = fill();

    private static final Set<String> DOING = Set.of(
            "added",
            "dosed",
            "gave",
            "extra",
            "manually",
            "manual",
            "hand",
            "boost",
            "off",
            "poured",
            "put",
            "oneoff",
            "+",
            "plus");
    static final Set<String> NOT_A_NAME = Set.of(
            "by",
            "more",
            "less",
            "max",
            "limit",
            "minus",
            "per",
            "each",
            "every",
            "ro",
            "rodi",
            "water",
            "stopped",
            "stop",
            "paused",
            "if",
            "for",
            "into",
            "until",
            "not",
            "no",
            "none",
            "since",
            "starting",
            "seit",
            "ab",
            "as");

    private static final Set<String> NOT_DOSED = Set.of(
            "flow",
            "turnover",
            "evaporation",
            "evaporates",
            "evaporated",
            "loses",
            "lost",
            "loss",
            "skimmate",
            "pulls",
            "pulled",
            "top",
            "topup",
            "ro",
            "rodi",
            "drip",
            "drips",
            "water",
            "freshwater",
            "seawater",
            "bottle",
            "syringe",
            "sample",
            "leaks",
            "removed",
            "verdunstung");

    private final Clauses text;
    private final int start;
    private final int end;
    private final BitSet said = new BitSet();

    private DosePhrase(Clauses text, int start, int end) {
        this.text = text;
        this.start = start;
        this.end = end;
    }

    private static Set<String> fill() {
        Set<String> all = new HashSet<>(RateWords.LEAD);
        all.addAll(RateWords.BETWEEN);
        all.addAll(OneOffPhrase.VERBS);
        all.addAll(OneOffPhrase.TAIL);
        all.addAll(Set.of(
                "on",
                "cut",
                "brought",
                "kept",
                "keep",
                "keeping",
                "auto",
                "automatic",
                "with",
                "only",
                "total",
                "went",
                "going",
                "gone",
                "tank",
                "for",
                "from",
                "each",
                "it",
                "we",
                "i",
                "@"));
        all.removeAll(Set.of("*"));
        return Set.copyOf(all);
    }

    static Optional<Clauses.Found> at(Clauses text, int start) {
        int end = start;
        while (!text.stop(end) && end - start <= LONGEST) {
            end++;
        }
        if (end - start > LONGEST) {
            return Optional.empty();
        }
        int whole = text.is(end, ",") && nameOnly(text, start, end)
                ? amountBehind(text, end + 1).orElse(end)
                : end;
        return new DosePhrase(text, start, whole).read();
    }

    /** {@code blue mix, 40 ml a day}: a comma between the name and its amount. */
    private static boolean nameOnly(Clauses text, int from, int to) {
        boolean words = to - from <= LONGEST_NAME + 1;
        for (int i = from; i < to; i++) {
            words &= text.tokens.get(i).word();
        }
        return words;
    }

    private static Optional<Integer> amountBehind(Clauses text, int from) {
        int end = from;
        while (!text.stop(end) && end - from <= LONGEST) {
            end++;
        }
        boolean rate = end - from <= LONGEST
                && text.number(from)
                && text.volume(from + 1).isPresent()
                && RatePhrase.often(text, from + 2)
                        .filter(p -> p.end() <= text.size())
                        .isPresent();
        return rate ? Optional.of(end) : Optional.empty();
    }

    /** How much, in mL; tokens up to {@code to} tell it. */
    private record Quantity(double ml, boolean millilitres, int from, int to) {}

    private Optional<Clauses.Found> read() {
        return quantity().flatMap(q -> {
            said.set(q.from(), q.to());
            Optional<Rate.Period> period = period(q);
            boolean relative = text.in(q.from() - 1, RateWords.RELATIVE);
            return period.isEmpty() ? once(q) : relative ? Optional.empty() : rate(q, period.get());
        });
    }

    /** The only volume of the clause, or the new one where it says {@code from 40 to 50 ml}. */
    private Optional<Quantity> quantity() {
        List<Quantity> all = new ArrayList<>();
        for (int i = start; i < end; i++) {
            volume(i).ifPresent(all::add);
        }
        if (all.isEmpty()) {
            return Optional.empty();
        }
        Quantity last = all.get(all.size() - 1);
        int before = old(last.from());
        boolean alone = all.stream().allMatch(q -> q.equals(last) || q.from() >= before);
        boolean relative = text.in(last.from() - 1, RateWords.RELATIVE) && !text.in(last.from() - 1, DOING);
        said.set(Math.min(before, last.from()), last.from());
        return alone && !relative ? Optional.of(last) : Optional.empty();
    }

    private Optional<Quantity> volume(int i) {
        Optional<VolumeUnit> unit = text.volume(i + 1).filter(v -> v == VolumeUnit.MILLILITRE || v == VolumeUnit.LITRE);
        if (text.value(i).isEmpty() || unit.isEmpty()) {
            return Optional.empty();
        }
        boolean product = text.is(i - 1, "x") && text.number(i - 2) && i - 2 >= start;
        double times = product ? text.value(i - 2).orElse(0) : 1;
        double ml = times * text.value(i).getAsDouble() * unit.get().litres().orElse(0) * 1000;
        return Optional.of(new Quantity(ml, unit.get() == VolumeUnit.MILLILITRE, product ? i - 2 : i, i + 2));
    }

    /** Where {@code from 40 ml/day to}, {@code 40 ->}, {@code by 5 to} begins before an amount; the amount itself where nothing of it stands. */
    private int old(int amount) {
        boolean arrow = text.is(amount - 1, ">") && text.is(amount - 2, "-");
        boolean to = text.is(amount - 1, "to");
        for (int i = amount - 1; (arrow || to) && i >= Math.max(start, amount - 8); i--) {
            if (text.number(i)) {
                return text.in(i - 1, Set.of("from", "by")) ? i - 1 : i;
            }
        }
        return amount;
    }

    private Optional<Rate.Period> period(Quantity quantity) {
        Optional<Rate.Period> behind = RatePhrase.often(text, quantity.to()).filter(p -> p.end() <= end);
        if (behind.isPresent()) {
            said.set(quantity.to(), behind.get().end());
            return behind;
        }
        for (int i = start; i < end; i++) {
            Optional<Rate.Period> here = said.get(i) ? Optional.empty() : RatePhrase.often(text, i);
            if (here.filter(p -> p.end() <= end).isPresent()) {
                said.set(i, here.get().end());
                return here;
            }
        }
        return Optional.empty();
    }

    private Optional<Clauses.Found> rate(Quantity quantity, Rate.Period period) {
        Optional<RatePhrase.Start> from = from();
        List<String> names = names(quantity);
        List<Said> rates = names.stream()
                .map(n ->
                        (Said) new Said.Rate(n, quantity.ml() * period.perDay(), from.flatMap(RatePhrase.Start::date)))
                .toList();
        return rates.isEmpty() ? Optional.empty() : Optional.of(new Clauses.Found(end, 0.75, rates));
    }

    private Optional<RatePhrase.Start> from() {
        for (int i = start; i < end; i++) {
            Optional<RatePhrase.Start> found =
                    said.get(i) ? Optional.empty() : RatePhrase.start(text, i).filter(s -> s.end() <= end);
            if (found.isPresent()) {
                said.set(i, found.get().end());
                return found;
            }
        }
        return Optional.empty();
    }

    private Optional<Clauses.Found> once(Quantity quantity) {
        boolean doing = false;
        for (int i = start; i < end; i++) {
            doing |= text.in(i, DOING);
        }
        List<Said> all = names(quantity).stream()
                .map(n -> (Said) new Said.OneOff(n, quantity.ml()))
                .toList();
        return doing && !all.isEmpty() ? Optional.of(new Clauses.Found(end, 0.7, all)) : Optional.empty();
    }

    /** The one name of the clause, or several joined where each gets the amount; none where other words are left. */
    private List<String> names(Quantity quantity) {
        int from = start;
        while (from < end && plain(from)) {
            from++;
        }
        int to = from;
        while (to < end && !said.get(to) && (!plain(to) || text.and(to))) {
            to++;
        }
        while (to > from && plain(to - 1)) {
            to--;
        }
        for (int i = to; i < end; i++) {
            if (!plain(i)) {
                return List.of();
            }
        }
        return to == from ? List.of() : split(from, to, quantity);
    }

    /** Whether a word tells nothing of the name. */
    private boolean plain(int i) {
        return said.get(i) || (text.in(i, FILL) && !hyphen(i)) || text.is(i, ",");
    }

    /** A sign inside a word. */
    private boolean hyphen(int i) {
        return text.is(i, "-")
                && i > start
                && i + 1 < end
                && text.tokens.get(i - 1).to() == text.tokens.get(i).from()
                && text.tokens.get(i).to() == text.tokens.get(i + 1).from();
    }

    /** {@code x 4}: a count, no name. */
    private boolean times(int i) {
        return text.is(i, "x") && (text.number(i - 1) || text.number(i + 1));
    }

    private List<String> split(int from, int to, Quantity quantity) {
        List<String> names = new ArrayList<>();
        int begin = from;
        for (int i = from; i <= to; i++) {
            if (i == to || text.and(i)) {
                name(begin, i, quantity).ifPresent(names::add);
                begin = i + 1;
            }
        }
        boolean each = false;
        for (int i = start; i < end; i++) {
            each |= text.is(i, "each");
        }
        boolean all =
                names.size() == 1 ? begin == to + 1 && !joined(from, to) : each && names.size() == joins(from, to) + 1;
        return all ? names : List.of();
    }

    private boolean joined(int from, int to) {
        return joins(from, to) > 0;
    }

    private int joins(int from, int to) {
        int joins = 0;
        for (int i = from; i < to; i++) {
            joins += text.and(i) ? 1 : 0;
        }
        return joins;
    }

    private Optional<String> name(int from, int to, Quantity quantity) {
        Optional<Names.Match> known = text.additive(from).filter(m -> m.to() == to);
        if (known.isPresent()) {
            return known.map(Names.Match::means);
        }
        int words = 0;
        for (int i = from; i < to; i++) {
            Token token = text.tokens.get(i);
            if (text.in(i, NOT_A_NAME)
                    || Hedges.ahead(text, i)
                    || times(i)
                    || !(token.word() || counted(i) && i > from || token.is("-"))) {
                return Optional.empty();
            }
            words += token.word() ? 1 : 0;
        }
        boolean fits = from < to
                && words > 0
                && words <= LONGEST_NAME
                && !otherThing(text, from, to)
                && quantity.millilitres();
        return fits ? Optional.of(text.written(from, to)) : Optional.empty();
    }

    /** {@code pump 2}: which one; behind a test's name a number is its result. */
    private boolean counted(int i) {
        String number = text.tokens.get(i).text();
        return text.number(i)
                && number.chars().allMatch(Character::isDigit)
                && text.test(i - 1).isEmpty();
    }

    /** Whether words name something that is not dosed: a pump's flow, what evaporates, food. */
    static boolean otherThing(Clauses text, int from, int to) {
        List<Token> words = text.tokens.subList(from, to);
        boolean part = Names.all(words, k -> text.vocabulary.find(Alias.Kind.PART, k)).stream()
                .anyMatch(m -> !m.means().endsWith("pump") || m.means().equals("return_pump"));
        boolean event = Names.all(words, k -> text.vocabulary.find(Alias.Kind.EVENT, k)).stream()
                .anyMatch(m -> !m.means().equals("pump"));
        return part || event || words.stream().anyMatch(t -> NOT_DOSED.contains(t.text()));
    }
}
