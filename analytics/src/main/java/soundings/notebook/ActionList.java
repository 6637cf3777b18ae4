package soundings.notebook;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What to do, the most pressing first.
 *
 * @param instead what is said where there is nothing to do, which is an answer too
 */
public record ActionList(String id, String caption, List<Entry> entries, String instead, List<String> restsOn)
        implements Item {
    /** Begins a caution that is written out at an entry before. */
    public static final String AS_UNDER = "As under ";

    public ActionList {
        entries = List.copyOf(entries);
        restsOn = List.copyOf(restsOn);
    }

    /** {@code 1 now, 4 this week, 10 when it suits}. */
    public String tally() {
        return Stream.of(When.values())
                .map(when -> Map.entry(
                        when, entries.stream().filter(e -> e.when() == when).count()))
                .filter(count -> count.getValue() > 0)
                .map(count -> count.getValue() + " " + count.getKey().words())
                .collect(Collectors.joining(", "));
    }

    @Override
    public <R> R match(
            Function<Prose, R> prose,
            Function<TableItem, R> table,
            Function<ChartItem, R> chart,
            Function<WorkingItem, R> working,
            Function<ActionList, R> actions) {
        return actions.apply(this);
    }

    /**
     * One thing to do.
     *
     * @param tank empty where it concerns no one tank
     * @param what an order in a few words, with the amount
     * @param steps what belongs to it, a short line each; none for most
     * @param reasons why, a sentence each
     * @param sure how sure, in words
     * @param caution what can go wrong, empty for most
     * @param target the id where more is said, empty for none
     */
    public record Entry(
            When when,
            String tank,
            String what,
            List<String> steps,
            List<String> reasons,
            String sure,
            String caution,
            String target,
            List<String> restsOn) {
        public Entry {
            steps = List.copyOf(steps);
            reasons = List.copyOf(reasons);
            restsOn = List.copyOf(restsOn);
        }

        /** The same with other reasons and another caution. */
        Entry with(List<String> others, String otherCaution) {
            return new Entry(when, tank, what, steps, others, sure, otherCaution, target, restsOn);
        }
    }

    /** How pressing. */
    public enum When {
        NOW("now"),
        SOON("this week"),
        MONTH("this month"),
        HANDY("when it suits");

        private final String words;

        When(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
