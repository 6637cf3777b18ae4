package soundings.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soundings.advice.Action.Urgency;

/** Containers to fill, additives to order, pumps to set right. */
final class SupplyActions {
    /** A pump further off than this is worth setting right; common practice, no source. */
    private static final double OFF = 0.1;

    private static final int MONTH_DAYS = 30;

    private SupplyActions() {}

    static List<Action> of(Supply supply, LocalDate asOf) {
        List<Action> actions = new ArrayList<>();
        supply.emptyOn().ifPresent(empty -> container(supply, empty, asOf).ifPresent(actions::add));
        supply.delivered().stream()
                .filter(d -> Math.abs(d - 1) > OFF)
                .mapToObj(d -> calibrate(supply, d))
                .forEach(actions::add);
        return actions;
    }

    private static Optional<Action> container(Supply supply, LocalDate empty, LocalDate asOf) {
        LocalDate orderBy = supply.orderBy().orElse(empty);
        if (orderBy.isAfter(asOf.plusDays(MONTH_DAYS))) {
            return Optional.empty();
        }
        boolean late = !orderBy.isAfter(asOf);
        String what = late
                ? "Fill up " + supply.additive() + " by " + empty
                : "Order " + supply.additive() + " by " + orderBy;
        String why = "about " + Phrases.ml(supply.mlLeft().orElse(0)) + " are left; " + going(supply)
                + " the container is empty on " + empty + unchanged(supply, empty);
        return Optional.of(action(supply, late ? Urgency.SOON : Urgency.MONTH, what, why));
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
