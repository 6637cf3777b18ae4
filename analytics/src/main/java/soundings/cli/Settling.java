package soundings.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Which saved logs have come to rest. One save makes many events (writes, a rename over the old file, a setup saved with it): a log is
 * due once, when it has kept its stamp for {@value #STILL_MILLIS} ms. A log that could not be read then may be half saved: it is due
 * again at growing distances for {@value #PATIENCE_MILLIS} ms. Knows no clock: times are milliseconds of any beginning.
 *
 * @param <L> what names a log
 */
final class Settling<L> {
    static final long STILL_MILLIS = 300;
    static final long PATIENCE_MILLIS = 10_000;

    private final Function<L, Stamp> look;
    private final Map<L, Waiting> waiting = new LinkedHashMap<>();
    private final Map<L, Stamp> reported = new LinkedHashMap<>();

    Settling(Function<L, Stamp> look) {
        this.look = look;
    }

    /** What tells one state of a log's files from another. */
    record Stamp(long size, long modified) {}

    /** @param since when this stamp was first seen; {@code next} when to look again */
    private record Waiting(Stamp stamp, long since, long next) {}

    /** @param last whether it will not be tried again */
    record Due<L>(L log, boolean last) {}

    void touched(L log, long now) {
        waiting.put(log, new Waiting(look.apply(log), now, now + STILL_MILLIS));
    }

    boolean isIdle() {
        return waiting.isEmpty();
    }

    /** Those at rest; each must be answered with {@link #read} or {@link #unreadable}. */
    List<Due<L>> due(long now) {
        waiting.replaceAll((log, was) -> {
            Stamp stamp = look.apply(log);
            return stamp.equals(was.stamp()) ? was : new Waiting(stamp, now, now + STILL_MILLIS);
        });
        waiting.entrySet()
                .removeIf(e -> e.getValue().next() <= now
                        && isOld(e.getKey(), e.getValue().stamp()));
        return waiting.entrySet().stream()
                .filter(e -> e.getValue().next() <= now)
                .map(e -> new Due<>(e.getKey(), now - e.getValue().since() >= PATIENCE_MILLIS))
                .toList();
    }

    /** Gone, or not changed since it was reported. */
    private boolean isOld(L log, Stamp stamp) {
        return stamp.size() == 0 || stamp.equals(reported.get(log));
    }

    /** The state that was found due is done with, whether or not it could be read. */
    void read(L log) {
        Waiting was = waiting.remove(log);
        if (was != null) {
            reported.put(log, was.stamp());
        }
    }

    /** To be tried again after as long again as it has waited, and a last time when patience ends. */
    void unreadable(L log, long now) {
        waiting.computeIfPresent(log, (l, was) -> {
            long waited = Math.max(STILL_MILLIS, now - was.since());
            return new Waiting(was.stamp(), was.since(), Math.min(now + waited, was.since() + PATIENCE_MILLIS));
        });
    }
}
