package soundings.upkeep;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import soundings.advice.Advice;
import soundings.advice.Judgement;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.chemistry.TargetRange;
import soundings.estimate.Estimate;
import soundings.estimate.Estimates;
import soundings.history.History;
import soundings.history.Note;
import soundings.history.TankHistory;
import soundings.log.Remark;

/** Notes of animals by what they tell, and the water before each loss. */
final class AnimalNotes {
    /** Days before a loss that are looked at; common practice, no source. */
    private static final int FORTNIGHT = 14;

    /** The level this many days beside an end of the fortnight still stands for it. */
    private static final int NEAR = 3;

    private static final Set<String> MOVES = Set.of("added", "moved", "spawn");
    private static final Set<String> CONDITIONS = Set.of("symptom", "condition");

    private final History history;
    private final Estimates estimates;
    private final Advice advice;
    private final Reference reference;
    private final Losses losses;

    private AnimalNotes(History history, Estimates estimates, Advice advice, Reference reference) {
        this.history = history;
        this.estimates = estimates;
        this.advice = advice;
        this.reference = reference;
        this.losses = new Losses(reference);
    }

    static List<Animals> of(History history, Estimates estimates, Advice advice, Reference reference) {
        AnimalNotes notes = new AnimalNotes(history, estimates, advice, reference);
        return history.tanks().stream()
                .map(notes::tank)
                .filter(a -> !a.isEmpty())
                .toList();
    }

    private Animals tank(TankHistory tank) {
        return new Animals(
                tank.tank(), kinds(tank, MOVES), losses(tank), kinds(tank, CONDITIONS), kinds(tank, Set.of("feeding")));
    }

    private List<Remark> kinds(TankHistory tank, Set<String> kinds) {
        return tank.remarks().stream()
                .filter(r -> kinds.contains(r.kind()) && !r.date().isAfter(history.asOf()))
                .sorted(Comparator.comparing(Remark::date))
                .toList();
    }

    private List<Animals.Loss> losses(TankHistory tank) {
        List<Note> all = Note.of(tank);
        return losses.of(tank, history.asOf()).stream()
                .map(notes -> loss(tank, notes, all))
                .toList();
    }

    private Animals.Loss loss(TankHistory tank, List<Note> notes, List<Note> all) {
        LocalDate on = notes.get(0).on();
        LocalDate from = on.minusDays(FORTNIGHT);
        List<Animals.Shift> water = estimates.outcomes().stream()
                .filter(o -> o.tank().equals(tank.tank()))
                .flatMap(o -> o.match(e -> shift(e, from, on).stream(), n -> Optional.<Animals.Shift>empty().stream()))
                .sorted(Comparator.comparing((Animals.Shift s) -> !s.standsOut()))
                .toList();
        List<Note> before = all.stream()
                .filter(n -> n.on().isAfter(from) && !n.on().isAfter(on))
                .filter(n -> notes.stream().noneMatch(l -> l.at().equals(n.at())))
                .toList();
        return new Animals.Loss(notes.get(0), notes.subList(1, notes.size()), water, before);
    }

    private Optional<Animals.Shift> shift(Estimate estimate, LocalDate from, LocalDate until) {
        List<Estimate.Day> days = estimate.track().stream()
                .filter(d ->
                        !d.date().isBefore(from.minusDays(NEAR)) && !d.date().isAfter(until))
                .toList();
        Optional<Estimate.Day> first = nearest(days, from);
        Optional<Estimate.Day> last = nearest(days, until);
        if (first.isEmpty()
                || last.isEmpty()
                || !first.get().date().isBefore(last.get().date())) {
            return Optional.empty();
        }
        return Optional.of(shift(estimate, first.get(), last.get(), days));
    }

    private static Optional<Estimate.Day> nearest(List<Estimate.Day> days, LocalDate to) {
        return days.stream()
                .filter(d -> Math.abs(d.date().toEpochDay() - to.toEpochDay()) <= NEAR)
                .min(Comparator.comparingLong(d -> Math.abs(d.date().toEpochDay() - to.toEpochDay())));
    }

    private Animals.Shift shift(Estimate estimate, Estimate.Day first, Estimate.Day last, List<Estimate.Day> days) {
        List<Estimate.Day> between =
                days.stream().filter(d -> !d.date().isBefore(first.date())).toList();
        double lowest = between.stream()
                .mapToDouble(d -> d.level().mid())
                .min()
                .orElse(first.level().mid());
        double highest = between.stream()
                .mapToDouble(d -> d.level().mid())
                .max()
                .orElse(first.level().mid());
        boolean moved = first.level().high() < last.level().low()
                || last.level().high() < first.level().low();
        boolean outside = range(estimate.tank(), estimate.parameter())
                .filter(t -> lowest < t.low() || highest > t.high())
                .isPresent();
        return new Animals.Shift(
                estimate.parameter(),
                first.date(),
                last.date(),
                first.level(),
                last.level(),
                lowest,
                highest,
                moved,
                outside);
    }

    private Optional<TargetRange> range(String tank, Parameter parameter) {
        return range(tank, parameter, history, advice, reference);
    }

    /** The range a test is judged by: the judgement's own, else the keeper's, else the reference's. */
    static Optional<TargetRange> range(
            String tank, Parameter parameter, History history, Advice advice, Reference reference) {
        return advice.judgements().stream()
                .filter(j -> j.tank().equals(tank) && j.parameter().equals(parameter))
                .findFirst()
                .flatMap(Judgement::target)
                .or(() -> history.setup()
                        .findTarget(tank, parameter)
                        .map(t -> new TargetRange(parameter, t.low(), t.high(), "setup")))
                .or(() -> reference.findTarget(parameter));
    }
}
