package soundings.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import soundings.chemistry.Reference;
import soundings.log.Issue;
import soundings.log.Reading;
import soundings.log.SwappedColumns;
import soundings.sheet.CellRef;
import soundings.sheet.Region;

/** Results that stand under each other's heading: each of two columns holds values of the other's kind and not of its own. */
final class Swapped {
    private final Reference reference;
    private final Set<Reading> exchanged = Collections.newSetFromMap(new IdentityHashMap<>());
    private final List<Issue> issues = new ArrayList<>();

    private Swapped(Reference reference) {
        this.reference = reference;
    }

    /** The readings, with those that look exchanged not to be used. */
    static List<Reading> setAside(List<Settling.Settled> settled, Reference reference, Ledger ledger) {
        Swapped swapped = new Swapped(reference);
        for (int i = 0; i < settled.size(); i++) {
            for (int j = i + 1; j < settled.size(); j++) {
                swapped.compare(settled.get(i), settled.get(j));
            }
        }
        swapped.issues.forEach(ledger::issue);
        return settled.stream()
                .flatMap(s -> s.readings().stream())
                .map(r -> swapped.exchanged.contains(r) ? r.refused("looks exchanged with another column") : r)
                .toList();
    }

    private void compare(Settling.Settled one, Settling.Settled other) {
        Typical first = Typical.of(one.series().parameter(), reference);
        Typical second = Typical.of(other.series().parameter(), reference);
        if (Math.abs(Math.log(first.mid() / second.mid())) < first.spread() + second.spread()) {
            return;
        }
        List<Reading> strayed = strayed(one, first, second);
        List<Reading> returned = strayed.isEmpty() ? List.of() : strayed(other, second, first);
        if (exchange(strayed, returned)) {
            set(one, other, strayed, returned);
        }
    }

    /** The readings of one series that look like the other's and not like their own. */
    private static List<Reading> strayed(Settling.Settled settled, Typical own, Typical other) {
        return settled.readings().stream()
                .filter(r -> other.near(r.amount().about()))
                .filter(r -> own.distance(r.amount().about())
                        > own.spread() + other.distance(r.amount().about()))
                .toList();
    }

    /** In the same row, or again and again. */
    private static boolean exchange(List<Reading> strayed, List<Reading> returned) {
        Set<Integer> rows = strayed.stream().map(r -> r.at().cell().row()).collect(Collectors.toSet());
        boolean sameRow =
                returned.stream().anyMatch(r -> rows.contains(r.at().cell().row()));
        return sameRow || (strayed.size() >= 2 && returned.size() >= 2);
    }

    private void set(Settling.Settled one, Settling.Settled other, List<Reading> strayed, List<Reading> returned) {
        exchanged.addAll(strayed);
        exchanged.addAll(returned);
        CellRef cell = strayed.get(0).at().cell();
        issues.add(new SwappedColumns(
                strayed.get(0).at(), new Region(cell, cell), name(one.series()), name(other.series())));
    }

    private static String name(Series series) {
        return series.header().isEmpty() ? series.parameter().name() : series.header();
    }
}
