package soundings.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import soundings.advice.Action.Urgency;

/** Containers to fill, additives to order, pumps to set right. */
final class SupplyActions {
    /** A pump further off than this is worth setting right; common practice, no source. */
    private static final double OFF = 0.1;

    private static final int MONTH_DAYS = 30;

    private SupplyActions() {}

    static List<Action> of(List<Supply> supplies, LocalDate asOf) {
        List<Action> actions = new ArrayList<>();
        List<Supply> due = supplies.stream()
                .filter(s -> s.emptyOn().isPresent() && !orderBy(s).isAfter(asOf.plusDays(MONTH_DAYS)))
                .sorted(Comparator.comparing(s -> empty(s)))
                .toList();
        if (due.size() == 1) {
            actions.add(container(due.get(0), asOf));
        } else if (!due.isEmpty()) {
            actions.add(shopping(due, asOf));
        }
        supplies.forEach(s -> s.delivered().stream()
                .filter(d -> Math.abs(d - 1) > OFF)
                .mapToObj(d -> calibrate(s, d))
                .forEach(actions::add));
        return actions;
    }

    private static LocalDate empty(Supply supply) {
        return supply.emptyOn().orElseThrow();
    }

    private static LocalDate orderBy(Supply supply) {
        return supply.orderBy().orElseGet(() -> empty(supply));
    }

    private static boolean isLate(Supply supply, LocalDate asOf) {
        return !orderBy(supply).isAfter(asOf);
    }

    /** Every container that runs out, as one errand. */
    private static Action shopping(List<Supply> due, LocalDate asOf) {
        String names = due.stream().map(Supply::additive).distinct().collect(Collectors.joining(", "));
        boolean several = due.stream().map(Supply::tank).distinct().count() > 1;
        return new Action(
                due.stream().anyMatch(s -> isLate(s, asOf)) ? Urgency.SOON : Urgency.MONTH,
                several ? "" : due.get(0).tank(),
                Optional.empty(),
                "Get " + names + ": " + due.size() + " containers run out, the first on " + empty(due.get(0)),
                due.stream().map(s -> line(s, asOf)).toList(),
                List.of("reckoned with the doses proposed; order a week ahead (common practice, no source)"),
                1,
                "",
                due.stream().map(Supply::cell).toList());
    }

    private static String line(Supply supply, LocalDate asOf) {
        return (supply.tank().isEmpty() ? "" : supply.tank() + ", ") + supply.additive() + ": "
                + (isLate(supply, asOf) ? "fill it up before " + empty(supply) : "order by " + orderBy(supply)) + " ("
                + Phrases.ml(supply.mlLeft().orElse(0)) + " left, " + Phrases.ml(supply.aheadMlPerDay()) + " a day)";
    }

    private static Action container(Supply supply, LocalDate asOf) {
        LocalDate empty = empty(supply);
        boolean late = isLate(supply, asOf);
        String what = late
                ? "Fill up " + supply.additive() + " by " + empty
                : "Order " + supply.additive() + " by " + orderBy(supply);
        String why = "about " + Phrases.ml(supply.mlLeft().orElse(0)) + " are left; " + going(supply)
                + " the container is empty on " + empty + unchanged(supply, empty);
        return action(supply, late ? Urgency.SOON : Urgency.MONTH, what, why);
    }

    private static String going(Supply supply) {
        String once = supply.correctionMl() > 0 ? " and " + Phrases.ml(supply.correctionMl()) + " besides" : "";
        return "at " + Phrases.ml(supply.aheadMlPerDay()) + " a day" + once
                + (supply.isToChange() ? ", as proposed," : "");
    }

    private static String unchanged(Supply supply, LocalDate empty) {
        return supply.emptyUnchanged()
                .filter(day -> !day.equals(empty))
                .map(day -> " (as the pump is set, " + Phrases.ml(supply.mlPerDay()) + " a day: on " + day + ")")
                .orElse("");
    }

    private static Action calibrate(Supply supply, double delivered) {
        return action(
                supply,
                Urgency.MONTH,
                "Calibrate the pump of " + supply.additive(),
                "it gives " + Phrases.percent(delivered) + " of what it is set to; doses here allow for that");
    }

    private static Action action(Supply supply, Urgency urgency, String what, String why) {
        return new Action(urgency, supply.tank(), Optional.empty(), what, List.of(why), 1, "", List.of(supply.cell()));
    }
}
