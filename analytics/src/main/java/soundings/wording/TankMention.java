package soundings.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The tanks a clause speaks of elsewhere than at its head: {@code 10% WC on the pier}, {@code changed 20 l, both tanks}. */
final class TankMention {
    /** A clause that speaks of every tank; the name is one that stands for them all in a column of tanks too. */
    static final String ALL = "all tanks";

    private static final Set<String> EVERY = Set.of("both", "all", "every", "each", "beide", "beiden", "alle", "allen");
    private static final Set<String> BOTH = Set.of("both", "beide", "beiden");
    private static final Set<String> TANKS =
            Set.of("tank", "tanks", "system", "systems", "aquarium", "aquariums", "aquaria", "becken");
    private static final Set<String> COUNTED =
            Set.of("the", "of", "our", "my", "two", "three", "four", "five", "six", "zwei", "drei", "vier");
    private static final Set<String> BEFORE = Set.of(
            "on", "in", "for", "to", "at", "into", "im", "am", "ins", "auf", "beim", "fur", "dans", "sur", "pour", "en",
            "al", "op", "voor", "bij");
    private static final Set<String> ARTICLES =
            Set.of("the", "our", "my", "dem", "der", "den", "das", "le", "la", "les", "el", "de", "het");
    private static final Set<String> JOINS = Set.of("and", "&", "+", "und", "et", "y", "en");

    private TankMention() {}

    /**
     * Tokens {@code from} to {@code to} (one past the last) and the tanks they name.
     *
     * @param bare {@code both} without a word for tanks, which may be said of anything
     */
    record Found(int from, int to, List<String> tanks, boolean bare) {}

    /** {@code both tanks}, {@code all three tanks}: one past the last token, or {@code i} where they do not stand there. */
    static int every(Clauses text, int i) {
        int at = text.in(i, EVERY) ? text.pass(i + 1, COUNTED, 3) : i;
        return at > i && text.in(at, TANKS) ? at + 1 : i;
    }

    /** Passes the word {@code tank} behind a name. */
    static int kind(Clauses text, int i) {
        return text.pass(i, TANKS, 1);
    }

    /** The one mention between {@code start} and the end of its clause; empty where there is none or more than one. */
    static Optional<Found> in(Clauses text, int start) {
        Optional<Found> only = Optional.empty();
        int i = start;
        while (!text.stop(i)) {
            Optional<Found> found = at(text, i);
            if (found.isPresent() && only.isPresent()) {
                return Optional.empty();
            }
            only = found.isPresent() ? found : only;
            i = found.map(Found::to).orElse(i + 1);
        }
        return only.filter(f -> f.from() > start);
    }

    /** A clause that is a mention and nothing else. */
    static Optional<Found> alone(Clauses text, int start) {
        return at(text, start).filter(f -> text.stop(f.to()));
    }

    private static Optional<Found> at(Clauses text, int start) {
        boolean led = text.in(start, BEFORE);
        int i = text.pass(led ? start + 1 : start, ARTICLES, 1);
        int every = every(text, i);
        if (every > i) {
            return Optional.of(new Found(start, every, List.of(ALL), false));
        }
        if (text.in(i, BOTH) && text.stop(i + 1)) {
            return Optional.of(new Found(start, i + 1, List.of(ALL), true));
        }
        List<String> tanks = new ArrayList<>();
        int end = names(text, i, tanks);
        boolean ends = text.stop(end);
        return tanks.isEmpty() || !led && !ends ? Optional.empty() : Optional.of(new Found(start, end, tanks, false));
    }

    /** {@code lagoon and the pier tank}: one past the last name, the names added to {@code tanks}. */
    private static int names(Clauses text, int start, List<String> tanks) {
        int end = start;
        int i = start;
        while (true) {
            Optional<Names.Match> name = text.tank(i);
            if (name.isEmpty()) {
                return end;
            }
            tanks.add(name.get().means());
            end = kind(text, name.get().to());
            if (!text.in(end, JOINS)) {
                return end;
            }
            i = text.pass(end + 1, ARTICLES, 1);
        }
    }
}
