package soundings.upkeep;

import java.time.LocalDate;
import java.util.List;
import soundings.chemistry.Parameter;
import soundings.history.Note;
import soundings.log.Remark;
import soundings.quantity.Interval;

/**
 * What was noted of one tank's animals, each list oldest first.
 *
 * @param moves came in, went out, went elsewhere
 * @param conditions signs of illness and well-being
 */
public record Animals(
        String tank, List<Remark> moves, List<Loss> losses, List<Remark> conditions, List<Remark> feeding) {
    public Animals {
        moves = List.copyOf(moves);
        losses = List.copyOf(losses);
        conditions = List.copyOf(conditions);
        feeding = List.copyOf(feeding);
    }

    boolean isEmpty() {
        return moves.isEmpty() && losses.isEmpty() && conditions.isEmpty() && feeding.isEmpty();
    }

    /**
     * A loss and what the water and the keeper did in the fortnight before. What came before need not be the cause.
     *
     * @param noted the first note of it
     * @param again later notes of the same loss
     * @param water every test that could be followed, what stands out first
     * @param before notes of those days
     */
    public record Loss(Note noted, List<Note> again, List<Shift> water, List<Note> before) {
        public Loss {
            again = List.copyOf(again);
            water = List.copyOf(water);
            before = List.copyOf(before);
        }

        public LocalDate on() {
            return noted.on();
        }

        public List<Shift> standingOut() {
            return water.stream().filter(Shift::standsOut).toList();
        }
    }

    /**
     * One test's level at the beginning and the end of the fortnight, canonical unit.
     *
     * @param lowest the lowest level between, {@code highest} likewise
     * @param moved whether the two ends' intervals lie apart
     * @param outside whether the level left its range on a day between
     */
    public record Shift(
            Parameter parameter,
            LocalDate from,
            LocalDate until,
            Interval first,
            Interval last,
            double lowest,
            double highest,
            boolean moved,
            boolean outside) {
        public boolean standsOut() {
            return moved || outside;
        }

        public double change() {
            return last.mid() - first.mid();
        }
    }
}
