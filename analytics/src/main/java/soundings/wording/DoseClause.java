package soundings.wording;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A sentence about one additive's dose, in the reference's words of dosing: how much a day, how much more or less, that it ended or
 * goes on, or what was put in once. Every word must be known; one that is not leaves the sentence unread.
 */
final class DoseClause {
    /** Words of a clause that may still be understood whole. */
    private static final int LONGEST = 25;
    /** Commas inside one sentence: {@code no more alk until it comes down, pump off}. */
    private static final int COMMAS = 2;

    private static final Set<String> OF = Set.of("of", "de", "von", "van");
    private static final Set<String> ARROW_HEADS = Set.of(">", "→");

    /** What the words of dosing mean, named as in the reference. */
    private enum Word {
        PUMP,
        LIST,
        NAME,
        FILL,
        STILL,
        FIRST,
        TO,
        BY,
        FROM,
        UP,
        DOWN,
        MORE,
        LESS,
        TAKE,
        HALF,
        DOUBLE,
        TRIPLE,
        STOP,
        OFF,
        NONE,
        UNTIL,
        ON,
        SAME,
        ONCE,
        GIVEN,
        AFTER,
        EVE,
        PART,
        HOURLY,
        TIMES
    }

    private static final Set<Word> SETS = EnumSet.of(Word.TO, Word.ON, Word.FROM, Word.STILL, Word.LIST);

    private final Clauses text;
    private final int end;
    private int at;
    private final EnumSet<Word> words = EnumSet.noneOf(Word.class);
    private Optional<DoseName> name = Optional.empty();
    /** Names joined to the first; only what ended may be told of several. */
    private final List<DoseName> others = new ArrayList<>();

    private OptionalDouble ml = OptionalDouble.empty();
    private OptionalDouble percent = OptionalDouble.empty();
    private Optional<Rate.Period> period = Optional.empty();
    private Optional<RatePhrase.Start> day = Optional.empty();
    /** Which way a sign right before the amount turns it; 0 where none stands. */
    private int sign;
    /** What stands right before the amount or the share. */
    private Optional<Word> before = Optional.empty();

    private boolean old;
    private boolean commaBefore;

    private DoseClause(Clauses text, int start, int end) {
        this.text = text;
        this.at = start;
        this.end = end;
    }

    static Optional<Clauses.Found> at(Clauses text, int start) {
        int[] ends = ends(text, start);
        for (int i = ends.length - 1; i >= 0; i--) {
            Optional<Clauses.Found> found =
                    ends[i] < 0 ? Optional.empty() : new DoseClause(text, start, ends[i]).read();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** Where the clause ends, and where it ends with what stands behind its commas; -1 where that is too far. */
    private static int[] ends(Clauses text, int start) {
        int[] ends = new int[COMMAS + 1];
        int i = start;
        for (int comma = 0; comma <= COMMAS; comma++) {
            boolean more = comma == 0 || text.is(i, ",");
            i += comma > 0 && more ? 1 : 0;
            while (more && !text.stop(i)) {
                i++;
            }
            ends[comma] = more && i - start <= LONGEST ? i : -1;
        }
        return ends;
    }

    private Optional<Clauses.Found> read() {
        while (at < end) {
            if (!one()) {
                return Optional.empty();
            }
        }
        return name.isEmpty() ? Optional.empty() : said().flatMap(this::ofAll);
    }

    private Optional<Clauses.Found> ofAll(Said first) {
        List<Said> all = new ArrayList<>(List.of(first));
        others.forEach(n -> all.add(first.match(t -> t, r -> r.of(n.text()), o -> o, c -> c, r -> r)));
        boolean several = others.isEmpty() || ended() && others.stream().allMatch(DoseName::known);
        return several ? Optional.of(new Clauses.Found(end, 0.9, all)) : Optional.empty();
    }

    /** Passes one word, name or amount; false where it is none of a dose's, or one too many. */
    private boolean one() {
        return date() || amount() || share() || before() || often() || named() || word() || mark();
    }

    private boolean date() {
        Optional<RatePhrase.Start> found = text.dosing(at, "fill")
                ? Optional.empty()
                : RatePhrase.start(text, at).filter(s -> s.end() <= end);
        boolean takes = found.isPresent() && day.isEmpty() && found.get().date().isPresent();
        if (takes) {
            day = found;
            at = found.get().end();
        }
        return takes;
    }

    private boolean amount() {
        boolean signed = text.is(at, "+") || minus(at);
        int from = signed ? at + 1 : at;
        int product = product(from);
        int number = product > from ? product : from;
        boolean volume = text.value(number).isPresent()
                && text.volume(number + 1)
                        .filter(v -> v == VolumeUnit.MILLILITRE || v == VolumeUnit.LITRE)
                        .isPresent();
        if (!volume || ml.isPresent() || percent.isPresent()) {
            return false;
        }
        double each = text.volume(number + 1).get().litres().orElse(0)
                * 1000
                * text.value(number).getAsDouble();
        ml = OptionalDouble.of(each * (product > from ? text.value(from).orElse(1) : 1));
        sign = !signed ? 0 : text.is(at, "+") ? 1 : -1;
        at = number + 2;
        return parts(each);
    }

    /** {@code 5 ml 's ochtends en 4 ml 's avonds}: the parts of a day make the day's dose. */
    private boolean parts(double first) {
        int part = text.pass(at, Set.of("'", "s"), 2);
        if (!text.dosing(part, "part")) {
            return true;
        }
        int joined = part + 1;
        int next = text.and(joined) || text.is(joined, ",") ? joined + 1 : joined;
        Optional<VolumeUnit> unit = text.volume(next + 1).filter(v -> v == VolumeUnit.MILLILITRE);
        int behind = text.pass(next + 2, Set.of("'", "s"), 2);
        if (text.value(next).isPresent() && unit.isPresent() && text.dosing(behind, "part")) {
            ml = OptionalDouble.of(first + text.value(next).getAsDouble());
            period = Optional.of(new Rate.Period(1, behind + 1));
            at = behind + 1;
        }
        return true;
    }

    /** The amount behind {@code 4 x}, {@code 4 doses of}; the place itself where no such count stands there. */
    private int product(int i) {
        return text.number(i)
                ? text.dosing(i + 1)
                        .filter(w -> RatePhrase.counts(text, i + 1))
                        .map(w -> text.pass(w.to(), OF, 1))
                        .orElse(i)
                : i;
    }

    /** A minus sign set close to its number; one with space on both sides, or none, only parts. */
    private boolean minus(int i) {
        boolean close = text.is(i, "-")
                && text.number(i + 1)
                && text.tokens.get(i).to() == text.tokens.get(i + 1).from();
        return close
                && (i == 0 || text.tokens.get(i - 1).to() < text.tokens.get(i).from());
    }

    private boolean share() {
        boolean here = text.value(at).isPresent()
                && text.volume(at + 1).filter(v -> v == VolumeUnit.PERCENT).isPresent();
        if (!here || percent.isPresent() || ml.isPresent()) {
            return false;
        }
        percent = text.value(at);
        at += 2;
        return true;
    }

    /** The dose as it was, {@code from 40 to}, {@code 40 ->}: passed where the new one follows. */
    private boolean before() {
        if (!text.number(at) || old || ml.isPresent()) {
            return false;
        }
        boolean unit =
                text.volume(at + 1).filter(v -> v == VolumeUnit.MILLILITRE).isPresent();
        int behind = unit ? at + 2 : at + 1;
        int arrow = text.is(behind, "-") ? behind + 1 : behind;
        boolean pointed = text.in(arrow, ARROW_HEADS);
        boolean led = before.filter(w -> w == Word.FROM || w == Word.BY).isPresent() && text.dosing(behind, "to");
        old = pointed || led;
        before = Optional.of(Word.TO);
        at = pointed ? arrow + 1 : led ? behind + 1 : at;
        return old;
    }

    private boolean often() {
        boolean open = period.isEmpty();
        Optional<Rate.Period> found = open ? RatePhrase.often(text, at).filter(p -> p.end() <= end) : Optional.empty();
        found.ifPresent(p -> {
            period = found;
            at = p.end();
        });
        return found.isPresent();
    }

    private boolean named() {
        Optional<DoseName> found = DoseName.at(text, at).filter(n -> n.to() <= end || text.is(end, "."));
        boolean joined = name.isPresent() && (text.and(at - 1) || text.is(at - 1, ","));
        if (found.isEmpty() || name.isPresent() && !joined) {
            return false;
        }
        if (joined) {
            others.add(found.get());
        } else {
            name = found;
        }
        before = ml.isEmpty() && percent.isEmpty() ? Optional.of(Word.NAME) : before;
        at = Math.min(found.get().to(), end);
        return true;
    }

    private boolean word() {
        Optional<Names.Match> found = text.dosing(at).filter(w -> w.to() <= end);
        found.ifPresent(w -> {
            Word word = Word.valueOf(w.means().toUpperCase(Locale.ROOT));
            words.add(word);
            before = ml.isEmpty() && percent.isEmpty() ? Optional.of(word) : before;
            at = w.to();
        });
        return found.isPresent();
    }

    private boolean mark() {
        boolean comma = text.is(at, ",");
        boolean joint = name.isPresent() && text.and(at) && ml.isEmpty();
        boolean mark = comma || joint || text.in(at, Set.of(":", "=", "'", "•")) || text.is(at, "-") && !minus(at);
        commaBefore |= comma && ml.isEmpty();
        if (text.is(at, ":")
                && before.filter(w -> w == Word.MORE || w == Word.LESS).isPresent()) {
            words.removeAll(EnumSet.of(Word.MORE, Word.LESS));
        }
        before = comma || text.is(at, ":") || text.is(at, "=") ? Optional.of(Word.TO) : before;
        at += mark ? 1 : 0;
        return mark;
    }

    private Optional<Said> said() {
        if (has(Word.PART) || has(Word.HOURLY) || has(Word.TIMES)) {
            return Optional.empty();
        }
        return ml.isPresent() ? amountSaid() : percent.isPresent() ? shareSaid() : wordsSaid();
    }

    private Optional<Said> amountSaid() {
        boolean daily = period.isPresent() || has(Word.LIST);
        double amount = ml.getAsDouble() * period.map(Rate.Period::perDay).orElse(1.0);
        if (!has(Word.TAKE) && ended() || times().isPresent() || has(Word.SAME)) {
            return Optional.empty();
        }
        if (!daily) {
            boolean turned = direction() != 0 && step() || has(Word.LESS);
            if (turned && !has(Word.ONCE) && sign == 0) {
                return step(amount);
            }
            return has(Word.ONCE) && direction() == 0 && day.isEmpty() && !has(Word.ON) && shift() == 0
                    ? Optional.of(new Said.OneOff(name.get().text(), ml.getAsDouble()))
                    : Optional.empty();
        }
        if (has(Word.ONCE) || has(Word.GIVEN)) {
            return Optional.empty();
        }
        return step() ? step(amount) : setting(amount);
    }

    /** Whether the amount is what was added to the dose before, or taken from it. */
    private boolean step() {
        boolean right = before.filter(w -> w == Word.BY || w == Word.UP || w == Word.DOWN)
                .isPresent();
        return sign != 0 || has(Word.MORE) || has(Word.LESS) || has(Word.TAKE) || direction() != 0 && right && !old;
    }

    private Optional<Said> step(double amount) {
        int way = direction() + (has(Word.MORE) ? 1 : 0) - (has(Word.LESS) || has(Word.TAKE) ? 1 : 0);
        int turns = sign == 0 ? Integer.signum(way) : sign;
        boolean agree = turns != 0 && sign * way >= 0 && !(has(Word.UP) && has(Word.DOWN)) && !old && !has(Word.ON);
        return agree ? rate(turns * amount, Said.Rate.Told.STEP) : Optional.empty();
    }

    /** A direction alone before an amount leaves open whether it is the new dose or a step. */
    private Optional<Said> setting(double amount) {
        boolean clear = direction() == 0
                || old
                || commaBefore
                || before.filter(SETS::contains).isPresent();
        if (!clear && before.filter(w -> w == Word.NAME).isPresent()) {
            return rate(direction() * amount, Said.Rate.Told.EITHER);
        }
        return clear
                ? rate(amount, has(Word.STILL) && direction() == 0 ? Said.Rate.Told.STILL : Said.Rate.Told.A_DAY)
                : Optional.empty();
    }

    /** A test's bare name may speak of a result that rose. */
    private Optional<Said> shareSaid() {
        boolean to = before.filter(w -> w == Word.TO).isPresent();
        boolean dose = has(Word.PUMP) || !name.get().test();
        boolean plain = !ended() && times().isEmpty() && !has(Word.ON) && !has(Word.SAME) && !has(Word.ONCE);
        boolean less = direction() < 0 || has(Word.LESS);
        boolean way = (direction() != 0 || has(Word.MORE) || has(Word.LESS)) && (direction() <= 0 || !has(Word.LESS));
        double part = percent.getAsDouble() / 100;
        return !to && dose && plain && way && name.get().known() && part < 1
                ? rate(less ? 1 - part : 1 + part, Said.Rate.Told.TIMES)
                : Optional.empty();
    }

    private Optional<Said> wordsSaid() {
        if (!name.get().known() || period.isPresent() || has(Word.ONCE) || has(Word.STILL)) {
            return Optional.empty();
        }
        if (ended()) {
            boolean surely = has(Word.STOP)
                    || has(Word.OFF) && (dosed() || has(Word.UNTIL))
                    || has(Word.NONE) && (has(Word.PUMP) || has(Word.UNTIL) || shift() != 0 || has(Word.OFF));
            boolean only = !has(Word.ON) && !has(Word.SAME) && direction() == 0 && times().isEmpty();
            return surely && only ? rate(0, Said.Rate.Told.A_DAY) : Optional.empty();
        }
        if (times().isPresent()) {
            boolean dose = has(Word.PUMP) || !name.get().nutrient();
            return dose && !has(Word.ON) && !has(Word.SAME) && !has(Word.UP)
                    ? rate(times().getAsDouble(), Said.Rate.Told.TIMES)
                    : Optional.empty();
        }
        return direction() != 0 || !has(Word.ON) && !has(Word.SAME)
                ? Optional.empty()
                : rate(1, has(Word.ON) ? Said.Rate.Told.TIMES : Said.Rate.Told.AGAIN);
    }

    private boolean has(Word word) {
        return words.contains(word);
    }

    /** Whether the words speak of dosing, or the name is one of something dosed. */
    private boolean dosed() {
        return has(Word.PUMP) || !name.get().test();
    }

    private boolean ended() {
        return has(Word.STOP) || has(Word.OFF) || has(Word.NONE);
    }

    private int direction() {
        return (has(Word.UP) ? 1 : 0) - (has(Word.DOWN) ? 1 : 0);
    }

    private OptionalDouble times() {
        return has(Word.HALF)
                ? OptionalDouble.of(0.5)
                : has(Word.DOUBLE)
                        ? OptionalDouble.of(2)
                        : has(Word.TRIPLE) ? OptionalDouble.of(3) : OptionalDouble.empty();
    }

    /** Days from the day of the text to the one the dose begins on. */
    private int shift() {
        return (has(Word.AFTER) ? 1 : 0) - (has(Word.EVE) ? 1 : 0);
    }

    private Optional<Said> rate(double ml, Said.Rate.Told told) {
        return Optional.of(new Said.Rate(name.get().text(), ml, day.flatMap(RatePhrase.Start::date), told, shift()));
    }
}
