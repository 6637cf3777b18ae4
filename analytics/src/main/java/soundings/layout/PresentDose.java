package soundings.layout;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import soundings.chemistry.Names;
import soundings.log.DoseRate;
import soundings.wording.DoseSubject;

/**
 * The dose that stood before, of one additive in one tank. Names that only tell what is raised, {@code alk} and {@code KH solution},
 * stand for the same thing as the one other name that raises it.
 */
final class PresentDose {
    private final Ledger ledger;
    private final Function<String, DoseSubject> subjects;

    PresentDose(Ledger ledger, Function<String, DoseSubject> subjects) {
        this.ledger = ledger;
        this.subjects = subjects;
    }

    /** The last set on or before this day; empty where none was, or where it cannot be told which it was. */
    Optional<DoseRate> of(String additive, String tank, LocalDate day) {
        return all(additive, tank).stream().filter(d -> !d.date().isAfter(day)).reduce((a, b) -> b);
    }

    /** Those set of what this name stands for, the earliest first. */
    List<DoseRate> all(String additive, String tank) {
        List<DoseRate> inTank = ledger.entries().stream()
                .filter(DoseRate.class::isInstance)
                .map(DoseRate.class::cast)
                .filter(d -> d.tank().equals(tank))
                .sorted(Comparator.comparing(DoseRate::date))
                .toList();
        String name = Names.fold(additive);
        DoseSubject subject = subjects.apply(additive);
        List<DoseRate> named = inTank.stream()
                .filter(d -> Names.fold(d.additive()).equals(name))
                .toList();
        if (subject.parameter().isEmpty()) {
            return named;
        }
        List<DoseRate> same = inTank.stream()
                .filter(d -> subjects.apply(d.additive()).parameter().equals(subject.parameter()))
                .toList();
        Set<String> particular = same.stream()
                .map(DoseRate::additive)
                .filter(a -> !subjects.apply(a).general())
                .map(Names::fold)
                .collect(Collectors.toSet());
        if (!subject.general()) {
            particular.add(name);
        }
        boolean general =
                same.stream().anyMatch(d -> subjects.apply(d.additive()).general());
        return particular.size() <= 1 ? same : general || subject.general() ? List.of() : named;
    }
}
