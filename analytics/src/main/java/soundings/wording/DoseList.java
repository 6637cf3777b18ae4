package soundings.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Several doses in a row, counted once at the end: {@code doser at start: alk 80, calcium 48 ml/day}. A word of dosing leads them. */
final class DoseList {
    private static final int LONGEST_LEAD = 8;
    private static final Set<String> LEADS = Set.of("pump", "list", "fill", "first", "still", "to");
    private static final Set<String> PARTS = Set.of(",", "/", "+", "&", ";", "-", "•");

    private record Item(DoseName name, double number, Optional<VolumeUnit> unit, int end) {}

    private DoseList() {}

    static Optional<Clauses.Found> at(Clauses text, int start) {
        boolean daily = false;
        boolean dosing = false;
        int i = start;
        while (i - start < LONGEST_LEAD && lead(text, i)) {
            dosing |= text.dosing(i, "pump");
            daily |= text.dosing(i, "list");
            i = text.dosing(i).map(Names.Match::to).orElse(i + 1);
        }
        return dosing || daily ? items(text, i, daily) : Optional.empty();
    }

    private static boolean lead(Clauses text, int i) {
        return text.is(i, ":")
                || text.dosing(i).filter(w -> LEADS.contains(w.means())).isPresent()
                        && text.additive(i).isEmpty();
    }

    private static Optional<Clauses.Found> items(Clauses text, int start, boolean daily) {
        List<Item> items = new ArrayList<>();
        Optional<Item> item = item(text, start);
        while (item.isPresent()) {
            items.add(item.get());
            int end = item.get().end();
            item = PARTS.contains(end < text.size() ? text.tokens.get(end).text() : "") || text.and(end)
                    ? item(text, text.and(end + 1) ? end + 2 : end + 1)
                    : Optional.empty();
        }
        return items.size() < 2 ? Optional.empty() : counted(text, items, daily);
    }

    private static Optional<Item> item(Clauses text, int start) {
        return DoseName.at(text, start).flatMap(name -> {
            int number = text.pass(name.to(), Set.of(":", "=", "at", "@", "to"), 1);
            OptionalDouble value = text.value(number);
            Optional<VolumeUnit> unit = text.volume(number + 1).filter(v -> v == VolumeUnit.MILLILITRE);
            int end = unit.isPresent() ? number + 2 : number + 1;
            return value.isPresent() ? Optional.of(new Item(name, value.getAsDouble(), unit, end)) : Optional.empty();
        });
    }

    /** The last amount tells what all are counted in, and how often. */
    private static Optional<Clauses.Found> counted(Clauses text, List<Item> items, boolean daily) {
        Item last = items.get(items.size() - 1);
        Optional<Rate.Period> often = RatePhrase.often(text, last.end());
        double perDay = often.map(Rate.Period::perDay).orElse(daily ? 1.0 : Double.NaN);
        int end = often.map(Rate.Period::end).orElse(last.end());
        boolean even = items.stream()
                        .limit(items.size() - 1L)
                        .map(Item::unit)
                        .distinct()
                        .count()
                == 1;
        boolean over = text.stop(end) || text.and(end);
        return last.unit().isEmpty() || Double.isNaN(perDay) || !even || !over
                ? Optional.empty()
                : Optional.of(new Clauses.Found(
                        end,
                        0.9,
                        items.stream()
                                .map(i -> (Said) new Said.Rate(i.name().text(), i.number() * perDay, Optional.empty()))
                                .toList()));
    }
}
