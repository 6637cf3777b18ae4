package soundings.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** {@code alk 30 ml x4/day}, {@code 7.5 mL each, 4 times a day}, {@code 120 ml/d from 3 May}, {@code stopped alk}. */
final class RatePhrase {
    private RatePhrase() {}

    static Optional<Clauses.Found> at(Clauses text, int start) {
        int i = text.pass(start, RateWords.LEAD, 5);
        return DoseList.at(text, start)
                .or(() -> DoseClause.at(text, start))
                .or(() -> since(text, start))
                .or(() -> named(text, i))
                .or(() -> numberFirst(text, i))
                .or(() -> setting(text, i));
    }

    /** {@code since Friday alk 12 ml/d}: the day stands first. */
    private static Optional<Clauses.Found> since(Clauses text, int start) {
        return start(text, start)
                .flatMap(day -> named(text, text.pass(day.end(), RateWords.LEAD, 3))
                        .map(found -> new Clauses.Found(
                                found.end(),
                                found.sure(),
                                found.said().stream()
                                        .map(s -> on(s, day.date()))
                                        .toList())));
    }

    private static Said on(Said said, Optional<WrittenDate> day) {
        return said.match(t -> t, r -> r.since(day), o -> o, c -> c, r -> r);
    }

    /** The additive, then how much. */
    private static Optional<Clauses.Found> named(Clauses text, int i) {
        List<String> additives = new ArrayList<>();
        int at = additives(text, i, additives);
        if (additives.isEmpty()) {
            return unknownName(text, i);
        }
        return amount(text, text.pass(at, RateWords.BETWEEN, 5), additives, 0.93);
    }

    /** Up to three unknown words before an amount a day are an additive's name too. */
    private static Optional<Clauses.Found> unknownName(Clauses text, int i) {
        int to = i;
        while (to < i + 4 && to < text.size() && nameWord(text, to)) {
            to++;
        }
        return to == i
                        || IntStream.range(i, to).anyMatch(k -> Hedges.ahead(text, k))
                        || DosePhrase.otherThing(text, i, to)
                ? Optional.empty()
                : amount(text, text.pass(to, RateWords.BETWEEN, 5), List.of(text.written(i, to)), 0.7);
    }

    private static boolean nameWord(Clauses text, int i) {
        Token token = text.tokens.get(i);
        boolean numbered = token.number() && text.is(i - 1, "pump");
        boolean hyphen =
                token.is("-") && i + 1 < text.size() && text.tokens.get(i + 1).from() == token.to();
        return numbered
                || hyphen
                || token.word()
                        && text.dosing(i)
                                .filter(w ->
                                        !w.means().equals("name") && !w.means().equals("pump"))
                                .isEmpty()
                        && !RateWords.BETWEEN.contains(token.text())
                        && !RateWords.RELATIVE.contains(token.text())
                        && !RateWords.FROM.contains(token.text())
                || token.is("pump") && text.number(i + 1);
    }

    /** Known additives and tests joined by "and" are added to the names; the token behind the last, or the start where there is none. */
    private static int additives(Clauses text, int start, List<String> names) {
        int end = start;
        int i = start;
        while (i == start || text.and(end) || text.is(end, "/")) {
            Optional<Names.Match> known = text.additive(i);
            Optional<Names.Match> name = known.isPresent() ? known : text.test(i);
            if (name.isEmpty()) {
                return end;
            }
            int behind = name.get().to();
            names.add(known.map(Names.Match::means).orElse(text.written(i, behind)));
            end = text.is(behind, ".") && text.number(behind + 1) ? behind + 1 : behind;
            i = end + 1;
        }
        return end;
    }

    private static Optional<Clauses.Found> numberFirst(Clauses text, int i) {
        Optional<Measure> measure = measure(text, i);
        if (measure.isEmpty()) {
            return Optional.empty();
        }
        int behind = text.is(measure.get().end(), "of")
                ? measure.get().end() + 1
                : measure.get().end();
        List<String> additives = new ArrayList<>();
        int end = additives(text, behind, additives);
        List<String> named = additives.isEmpty() ? List.of("") : additives;
        return finish(
                text,
                additives.isEmpty() ? measure.get().end() : end,
                measure.get().mlPerDay(),
                named,
                0.85);
    }

    private static Optional<Clauses.Found> amount(Clauses text, int i, List<String> additives, double sure) {
        boolean turned = text.in(i, RateWords.COMPARED) && text.is(i + 1, ":");
        int at = text.is(i, "from") ? passOld(text, i) : turned ? i + 2 : i;
        return measure(text, at).flatMap(m -> finish(text, m.end(), m.mlPerDay(), additives, sure));
    }

    /** Passes {@code from 40 to}, {@code from 40 ml/day to}. */
    private static int passOld(Clauses text, int from) {
        for (int i = from + 2; i < from + 7; i++) {
            if (text.number(from + 1) && (text.is(i, "to") || text.is(i, "-"))) {
                return i + 1;
            }
        }
        return from;
    }

    private record Measure(double mlPerDay, int end) {}

    /** {@code 30 ml x4/day}, {@code 4 x 30 ml a day}, {@code 45 ml/day}. */
    private static Optional<Measure> measure(Clauses text, int i) {
        if (text.in(i, RateWords.RELATIVE) || text.in(i - 1, RateWords.RELATIVE) || text.in(i - 1, RateWords.TURNS)) {
            return Optional.empty();
        }
        Optional<Measure> parts = partsOfDay(text, i).or(() -> oftenFirst(text, i));
        if (parts.isPresent()) {
            return parts;
        }
        boolean product = text.number(i) && text.is(i + 1, "x") && text.number(i + 2);
        double factor = product ? text.value(i).orElse(0) : 1;
        int at = product ? i + 2 : i;
        Optional<VolumeUnit> unit = text.volume(at + 1).filter(v -> v.litres().isPresent());
        if (text.value(at).isEmpty() || unit.isEmpty()) {
            return Optional.empty();
        }
        double ml = factor * text.value(at).getAsDouble() * unit.get().litres().orElse(0) * 1000;
        return often(text, at + 2).map(p -> new Measure(ml * p.perDay(), p.end()));
    }

    /** {@code twice a day 15 ml}, {@code every 6 hours 2.5 ml}: how often stands first, and only there. */
    private static Optional<Measure> oftenFirst(Clauses text, int i) {
        return times(text, i)
                .or(() -> every(text, i))
                .filter(p -> text.value(p.end()).isPresent())
                .flatMap(p -> text.volume(p.end() + 1)
                        .filter(v -> v.litres().isPresent()
                                && often(text, p.end() + 2).isEmpty())
                        .map(v -> new Measure(
                                p.perDay()
                                        * text.value(p.end()).orElse(0)
                                        * v.litres().orElse(0)
                                        * 1000,
                                p.end() + 2)));
    }

    /** {@code 30 ml am 25 ml pm}, {@code 10 ml morning + 10 ml evening}: two or more doses that make a day's. */
    private static Optional<Measure> partsOfDay(Clauses text, int i) {
        double ml = 0;
        int parts = 0;
        int at = i;
        int end = i;
        while (text.value(at).isPresent()
                && text.volume(at + 1).isPresent()
                && text.in(at + 2, RateWords.PART_OF_DAY)) {
            ml += text.value(at).getAsDouble()
                    * text.volume(at + 1).get().litres().orElse(Double.NaN)
                    * 1000;
            parts++;
            end = at + 3;
            at = text.and(end) || text.is(end, ",") ? end + 1 : end;
        }
        return parts >= 2 && Double.isFinite(ml) ? Optional.of(new Measure(ml, end)) : Optional.empty();
    }

    /** {@code blue mix now 36 ml}: a new setting of something dosed; that it is a day's is not said. */
    private static Optional<Clauses.Found> setting(Clauses text, int i) {
        List<String> additives = new ArrayList<>();
        int at = additives(text, i, additives);
        int amount = text.pass(at, RateWords.BETWEEN, 5);
        boolean now = IntStream.range(at, amount).anyMatch(k -> text.in(k, RateWords.SETTING));
        boolean ml =
                text.volume(amount + 1).filter(v -> v == VolumeUnit.MILLILITRE).isPresent();
        boolean by = text.in(amount - 1, RateWords.TURNS);
        return additives.size() == 1 && now && !by && ml && text.value(amount).isPresent() && text.stop(amount + 2)
                ? Clauses.Found.one(
                        amount + 2,
                        0.6,
                        new Said.Rate(
                                additives.get(0),
                                text.value(amount).getAsDouble(),
                                Optional.empty(),
                                Said.Rate.Told.SETTING,
                                0))
                : Optional.empty();
    }

    /** How often: behind the unit, perhaps behind {@code each,}. */
    static Optional<Rate.Period> often(Clauses text, int start) {
        int i = text.is(start, "each") ? start + 1 : start;
        i = text.is(i, ",") && (times(text, i + 1).isPresent()) ? i + 1 : i;
        int part = text.pass(i, Set.of("'", "s"), 2);
        int other = text.pass(part + 2, Set.of("'", "s"), 2);
        if (text.dosing(part, "part") && text.and(part + 1) && text.dosing(other, "part")) {
            return Optional.of(new Rate.Period(2, other + 1));
        }
        Optional<Names.Match> hourly = text.dosing(i).filter(w -> w.means().equals("hourly"));
        if (hourly.isPresent()) {
            return Optional.of(new Rate.Period(24, hourly.get().to()));
        }
        Optional<Rate.Period> times = times(text, i);
        return times.or(() -> every(text, start)).or(() -> Rate.period(text.tokens, start));
    }

    /** {@code x4/day}, {@code 4x daily}, {@code 4 times a day}, {@code twice a day}, {@code 4 doses a day}. */
    private static Optional<Rate.Period> times(Clauses text, int i) {
        if (text.is(i, "x") && text.number(i + 1)) {
            return multiplied(text, text.value(i + 1).orElse(0), i + 2);
        }
        if (text.number(i) && counts(text, i + 1)) {
            return multiplied(text, text.value(i).orElse(0), i + 2);
        }
        Optional<Names.Match> once = text.dosing(i).filter(w -> w.means().equals("once"));
        if (once.isPresent()) {
            return multiplied(text, 1, once.get().to());
        }
        Integer word = i < text.size() ? RateWords.TIMES.get(text.tokens.get(i).text()) : null;
        return word == null ? Optional.empty() : multiplied(text, word, counts(text, i + 1) ? i + 2 : i + 1);
    }

    /** {@code x}, {@code times}, {@code doses}. */
    static boolean counts(Clauses text, int i) {
        return text.dosing(i, "times") || text.is(i, "doses");
    }

    private static Optional<Rate.Period> multiplied(Clauses text, double times, int i) {
        return Rate.period(text.tokens, i).map(p -> new Rate.Period(times * p.perDay(), p.end()));
    }

    /** {@code every 6 hours}, {@code every 2 days}, {@code every other day}. */
    private static Optional<Rate.Period> every(Clauses text, int i) {
        if (!text.in(i, RateWords.EVERY)) {
            return Optional.empty();
        }
        int at = text.pass(i + 1, RateWords.ARTICLES, 1);
        double count = text.in(at, RateWords.SECOND) ? 2 : text.value(at).orElse(0);
        boolean days = text.in(at + 1, RateWords.DAYS);
        boolean hours = text.in(at + 1, RateWords.HOURS);
        return count > 0 && (days || hours)
                ? Optional.of(new Rate.Period((days ? 1 : 24) / count, at + 2))
                : Optional.empty();
    }

    private static Optional<Clauses.Found> finish(
            Clauses text, int end, double mlPerDay, List<String> additives, double sure) {
        int at = split(text, end);
        Optional<Start> start = start(text, at);
        int last = start.map(Start::end).orElse(at);
        boolean told = text.in(at, RateWords.FROM) && start.isEmpty();
        if (told
                || !text.stop(last)
                        && !text.and(last)
                        && text.test(last).isEmpty()
                        && text.additive(last).isEmpty()) {
            return Optional.empty();
        }
        List<Said> said = additives.stream()
                .map(a -> (Said) new Said.Rate(a, mlPerDay, start.flatMap(Start::date)))
                .toList();
        return Optional.of(new Clauses.Found(last, sure, said));
    }

    /** Passes {@code in 4 doses}, {@code over 4 doses}, which do not change the rate, and {@code today}. */
    private static int split(Clauses text, int i) {
        boolean doses = text.in(i, Set.of("in", "over")) && text.number(i + 1) && text.is(i + 2, "doses");
        return text.pass(doses ? i + 3 : i, RateWords.DONE, 2);
    }

    record Start(Optional<WrittenDate> date, int end) {}

    static Optional<Start> start(Clauses text, int i) {
        if (!text.in(i, RateWords.FROM)) {
            return Optional.empty();
        }
        int from = text.is(i, "as") ? i + 2 : text.is(i + 1, "on") ? i + 2 : i + 1;
        if (text.in(from, Set.of("today", "now"))) {
            return Optional.of(new Start(Optional.empty(), from + 1));
        }
        Optional<WrittenDate> weekday = from < text.size()
                ? MonthNames.weekday(text.tokens.get(from).text()).map(WrittenDate::onWeekday)
                : Optional.empty();
        if (weekday.isPresent() && !text.number(from + 1)) {
            return Optional.of(new Start(weekday, from + 1));
        }
        for (int to = Math.min(from + 6, text.size()); to > from; to--) {
            Optional<WrittenDate> date = Dates.read(text.written(from, to));
            if (date.isPresent() && !date.get().readings().isEmpty()) {
                return Optional.of(new Start(date, to));
            }
        }
        return Optional.empty();
    }
}
