package soundings.care;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import soundings.chemistry.Reference;
import soundings.history.Point;
import soundings.history.TankHistory;
import soundings.log.AsWritten;
import soundings.log.Reading;

/**
 * Ammonia given on purpose to see whether the tank gets rid of it within a day.
 *
 * @param mgPerLitre as noted, empty where the note does not say
 */
public record Challenge(LocalDate on, OptionalDouble mgPerLitre, Outcome outcome, AsWritten at) {
    private static final Pattern AMOUNT =
            Pattern.compile("(\\d+(?:[.,]\\d{1,2})?)\\s*(?:mg\\s*/\\s*l|ppm)", Pattern.CASE_INSENSITIVE);

    /** What became of it. */
    public enum Outcome {
        CLEARED,
        /** The next day's tests still showed some. */
        NOT_CLEARED,
        /** Ammonia and nitrite were not both tested on the next day. */
        NOT_TESTED,
        /** The next day has not come. */
        PENDING
    }

    /** Whether words tell of one. */
    public static Predicate<String> words(Reference reference) {
        return new Vocabulary(reference)::speaksOfChallenge;
    }

    /** All of a tank's, oldest first, one a day. */
    static List<Challenge> of(TankHistory tank, LocalDate asOf, Rules rules) {
        Vocabulary words = new Vocabulary(rules.reference());
        Stream<Challenge> noted = tank.remarks().stream()
                .filter(r -> words.speaksOfChallenge(r.text()))
                .map(r -> of(tank, r.date(), r.text(), r.at(), asOf, rules));
        Stream<Challenge> read = tank.findSeries(rules.parameter("ammonia")).stream()
                .flatMap(s -> s.points().stream())
                .map(Point::reading)
                .filter(r -> words.speaksOfChallenge(r.at().text()))
                .map(r -> of(tank, r.date(), r.at().text(), r.at(), asOf, rules));
        List<Challenge> all = Stream.concat(noted, read)
                .filter(c -> !c.on().isAfter(asOf))
                .sorted(Comparator.comparing(Challenge::on)
                        .thenComparing(c -> c.mgPerLitre().isEmpty())
                        .thenComparing(c -> c.at().place()))
                .toList();
        return all.stream()
                .filter(c -> all.stream()
                        .filter(o -> o.on().equals(c.on()))
                        .findFirst()
                        .orElseThrow()
                        .equals(c))
                .distinct()
                .toList();
    }

    private static Challenge of(
            TankHistory tank, LocalDate on, String text, AsWritten at, LocalDate asOf, Rules rules) {
        Matcher amount = AMOUNT.matcher(text);
        OptionalDouble mgPerLitre = amount.find()
                ? OptionalDouble.of(Double.parseDouble(amount.group(1).replace(',', '.')))
                : OptionalDouble.empty();
        return new Challenge(on, mgPerLitre, outcome(tank, on.plusDays(1), asOf, rules), at);
    }

    private static Outcome outcome(TankHistory tank, LocalDate next, LocalDate asOf, Rules rules) {
        if (next.isAfter(asOf)) {
            return Outcome.PENDING;
        }
        List<Optional<Boolean>> gone = Stream.of("ammonia", "nitrite")
                .map(id -> none(tank, id, next, rules))
                .toList();
        if (gone.stream().anyMatch(g -> g.isPresent() && !g.get())) {
            return Outcome.NOT_CLEARED;
        }
        return gone.stream().allMatch(Optional::isPresent) ? Outcome.CLEARED : Outcome.NOT_TESTED;
    }

    /** Whether a day's last test shows none; empty where there was no test that day. */
    private static Optional<Boolean> none(TankHistory tank, String id, LocalDate day, Rules rules) {
        List<Reading> all = Tests.of(tank, rules.parameter(id), day).stream()
                .filter(r -> r.date().equals(day))
                .toList();
        return all.isEmpty()
                ? Optional.empty()
                : Optional.of(Tests.showsNone(all.get(all.size() - 1).amount(), rules.none(id)));
    }
}
