package soundings.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import soundings.advice.Action;
import soundings.advice.Recommendation;
import soundings.advice.Recommendation.Reason;
import soundings.history.DoseCourse;
import soundings.history.TankHistory;
import soundings.setup.Setup;

/**
 * What the setup workbook does not say yet and no dose can be worked out without.
 *
 * @param tanks tanks that are dosed, their water unknown
 * @param additives what goes in, its strength unknown
 */
record Unsaid(View view, List<String> tanks, List<String> additives) {
    static Unsaid of(View view) {
        return new Unsaid(
                view,
                view.tanks().stream()
                        .filter(t -> t.litres().isEmpty())
                        .filter(t -> going(view, t).findAny().isPresent())
                        .map(TankHistory::tank)
                        .toList(),
                view.tanks().stream()
                        .flatMap(t -> going(view, t))
                        .filter(Unsaid::isUnsaid)
                        .map(DoseCourse::name)
                        .distinct()
                        .toList());
    }

    private static Stream<DoseCourse> going(View view, TankHistory tank) {
        return tank.doses().stream().filter(c -> c.mlPerDayOn(view.asOf()) > 0);
    }

    /** What has a recipe that cannot be read is asked about by itself. */
    private static boolean isUnsaid(DoseCourse course) {
        return isUnknown(course)
                && course.additive().stream().allMatch(a -> a.recipe().isBlank());
    }

    private static boolean isUnknown(DoseCourse course) {
        return course.additive().stream().allMatch(a -> a.risePerMlInOneLitre().isEmpty());
    }

    private boolean isNone() {
        return tanks.isEmpty() && additives.isEmpty();
    }

    /** Whether an action asks for a part of the same, so that it need not be said again. */
    boolean covers(Action action) {
        boolean strength = additives.stream().anyMatch(a -> action.what().startsWith("Enter what " + a + " raises"));
        return !isNone()
                && (strength
                        || view.findings().advice().recommendations().stream()
                                .filter(r -> r.tank().equals(action.tank()))
                                .flatMap(r -> r.withheld().stream())
                                .filter(w ->
                                        w.reason() == Reason.VOLUME_UNKNOWN || w.reason() == Reason.STRENGTH_UNKNOWN)
                                .map(Recommendation.Withheld::wouldLift)
                                .anyMatch(action.what()::equals));
    }

    /** First where no dose at all can be worked out, last where it is about some. */
    boolean isFirst() {
        return view.tanks().stream()
                .filter(t -> t.litres().isPresent())
                .flatMap(t -> going(view, t))
                .allMatch(Unsaid::isUnknown);
    }

    Optional<ActionList.Entry> entry() {
        return isNone()
                ? Optional.empty()
                : Optional.of(new ActionList.Entry(
                        isFirst() ? ActionList.When.SOON : ActionList.When.HANDY,
                        "",
                        "Enter in the setup workbook " + what(),
                        List.of(),
                        reasons(),
                        "",
                        "",
                        "",
                        cells()));
    }

    private String what() {
        String water = tanks.isEmpty() ? "" : "how much water your tanks hold";
        String strength = additives.isEmpty() ? "" : "how strong your additives are";
        return water + (tanks.isEmpty() || additives.isEmpty() ? "" : " and ") + strength;
    }

    private List<String> reasons() {
        List<String> reasons = new ArrayList<>(List.of("Without it no dose can be worked out."));
        if (!tanks.isEmpty()) {
            reasons.add("Sheet Tanks, column Litres: " + Figures.list(placed(tanks, this::cellOfTank)) + ".");
        }
        if (!additives.isEmpty()) {
            reasons.add("Sheet Additives, what the label says (Parameter, Rise, Unit) or what you mixed (Recipe): "
                    + Figures.list(placed(additives, this::cellOfAdditive)) + ".");
        }
        String setup = view.findings().provenance().setupFile();
        String stem = view.findings().provenance().file().replaceAll("\\.[^.]*$", "");
        reasons.add(
                setup.isEmpty()
                        ? "There is no setup workbook yet: the command setup writes " + stem
                                + "-setup.xlsx beside the log, filled in as far as the log tells."
                        : "The file is " + setup + ".");
        return reasons;
    }

    private static List<String> placed(List<String> names, Function<String, Optional<String>> cellOf) {
        return names.stream()
                .map(n -> (n.isEmpty() ? "the tank" : n)
                        + cellOf.apply(n)
                                .map(c -> " (" + c.substring(c.indexOf('!') + 1) + ")")
                                .orElse(""))
                .toList();
    }

    private Optional<String> cellOfTank(String tank) {
        return view.findings()
                .history()
                .setup()
                .findTank(tank)
                .map(Setup.Tank::cell)
                .filter(c -> !c.isBlank());
    }

    private Optional<String> cellOfAdditive(String additive) {
        return view.findings().history().setup().additivesCalled(additive).stream()
                .map(Setup.Additive::cell)
                .filter(c -> !c.isBlank())
                .findFirst();
    }

    private List<String> cells() {
        return Stream.concat(
                        tanks.stream().flatMap(t -> cellOfTank(t).stream()),
                        additives.stream().flatMap(a -> cellOfAdditive(a).stream()))
                .toList();
    }
}
