package soundings.care;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import soundings.care.Course.Better;
import soundings.care.Course.Better.Answer;
import soundings.care.Course.Relapse;
import soundings.care.Course.SignFree;
import soundings.care.Plans.Treatment;
import soundings.estimate.MannKendall;
import soundings.quantity.Normal;

/** What the daily signs say: the days without one, the earliest end by the keeper's rule, whether they fall. */
final class Recovery {
    /** Fewer days cannot show a trend whatever they hold, once ties are reckoned with. */
    static final int FEWEST_DAYS = 5;

    private static final double Z_ONE_IN_TWENTY = 1.6448536269514722;

    private Recovery() {}

    static SignFree signFree(Treatment plan, LocalDate started, List<Sign> signs) {
        Optional<LocalDate> last = lastSeen(signs);
        LocalDate from = last.map(d -> d.plusDays(1)).orElse(started);
        List<Sign> free =
                signs.stream().filter(s -> !s.seen() && !s.on().isBefore(from)).toList();
        return new SignFree(
                free.isEmpty() ? Optional.empty() : Optional.of(from),
                free.isEmpty()
                        ? Optional.empty()
                        : Optional.of(free.get(free.size() - 1).on()),
                free.size(),
                end(plan, from));
    }

    private static Optional<LocalDate> lastSeen(List<Sign> signs) {
        return signs.stream().filter(Sign::seen).map(Sign::on).reduce((a, b) -> b);
    }

    /** The last of so many days in a row that begin with the first without a sign. */
    private static Optional<LocalDate> end(Treatment plan, LocalDate firstFree) {
        return plan.signFreeDays().isPresent() && plan.signFreeDays().getAsDouble() >= 1
                ? Optional.of(firstFree.plusDays(Math.round(plan.signFreeDays().getAsDouble()) - 1))
                : Optional.empty();
    }

    /** A sign on a day after one or more that were noted without; the signs of the days that follow it belong to it. */
    static List<Relapse> relapses(Treatment plan, LocalDate started, List<Sign> signs) {
        List<Relapse> all = new ArrayList<>();
        LocalDate firstFree = started;
        boolean free = false;
        for (Sign sign : signs) {
            Optional<LocalDate> after = end(plan, sign.on().plusDays(1));
            if (sign.seen() && free) {
                Optional<LocalDate> before = end(plan, firstFree);
                before.ifPresent(b -> all.add(
                        new Relapse(sign.on(), b, after.orElseThrow(), sign.at().place())));
            } else if (sign.seen() && !all.isEmpty()) {
                Relapse last = all.remove(all.size() - 1);
                all.add(new Relapse(last.on(), last.endBefore(), after.orElseThrow(), last.place()));
            }
            free = !sign.seen();
            firstFree = sign.seen() ? sign.on().plusDays(1) : firstFree;
        }
        return all;
    }

    /** A fall that would come by chance less than once in twenty counts as better, a rise likewise as worse. */
    static Better better(List<Sign> signs) {
        boolean counted = signs.stream().allMatch(s -> s.count().isPresent());
        List<Double> values = signs.stream()
                .map(s -> counted ? s.count().orElse(0) : s.seen() ? 1.0 : 0.0)
                .map(Number::doubleValue)
                .toList();
        OptionalInt first = values.isEmpty()
                ? OptionalInt.empty()
                : OptionalInt.of(values.get(0).intValue());
        OptionalInt last = values.isEmpty()
                ? OptionalInt.empty()
                : OptionalInt.of(values.get(values.size() - 1).intValue());
        if (values.size() < FEWEST_DAYS) {
            return new Better(Answer.TOO_FEW, values.size(), counted, 1, first, last);
        }
        double z = values.stream().distinct().count() < 2
                ? 0
                : MannKendall.of(values).z();
        Answer answer =
                z <= -Z_ONE_IN_TWENTY ? Answer.BETTER : z >= Z_ONE_IN_TWENTY ? Answer.WORSE : Answer.CANNOT_TELL;
        return new Better(answer, values.size(), counted, Normal.below(-Math.abs(z)), first, last);
    }
}
