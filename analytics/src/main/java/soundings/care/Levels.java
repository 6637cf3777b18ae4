package soundings.care;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import soundings.care.Course.Step;
import soundings.chemistry.Dilution;
import soundings.history.Change;
import soundings.history.TankHistory;

/**
 * What doses and water changes leave of a medicine. Nothing else is counted: light, carbon, rock and time take out more. On one day
 * the water is changed first and the dose goes into what is then there.
 *
 * @param why empty where every dose and every change is known
 */
record Levels(List<Step> steps, String why) {

    static Levels of(TankHistory tank, List<Given> doses, LocalDate until) {
        if (tank.litres().isEmpty()) {
            return new Levels(List.of(), "the litres of the tank are not known");
        }
        double litres = tank.litres().getAsDouble();
        List<Step> steps = new ArrayList<>();
        double level = 0;
        for (Happening h : happenings(tank, doses, until)) {
            if (h.unknown()) {
                return new Levels(steps, h.why());
            }
            double after =
                    h.fraction() > 0 ? Dilution.afterChange(level, 0, h.fraction()) : level + h.milligrams() / litres;
            double takenOut = Dilution.giveAgain(level, h.fraction(), litres);
            steps.add(new Step(h.on(), level, after, h.fraction(), takenOut, h.what(), h.place()));
            level = after;
        }
        return new Levels(steps, doses.isEmpty() ? "no dose is noted" : "");
    }

    private static List<Happening> happenings(TankHistory tank, List<Given> doses, LocalDate until) {
        LocalDate first = doses.isEmpty() ? until.plusDays(1) : doses.get(0).on();
        Stream<Happening> changes = tank.changes().stream()
                .filter(c -> c.on().isAfter(first) && !c.on().isAfter(until))
                .map(Happening::of);
        return Stream.concat(changes, doses.stream().map(Happening::of))
                .sorted(Comparator.comparing(Happening::on)
                        .thenComparing(h -> h.dose())
                        .thenComparing(Happening::place))
                .toList();
    }

    /** A dose or a change on its way into the sum. */
    private record Happening(LocalDate on, boolean dose, OptionalDouble amount, String what, String why, String place) {
        static Happening of(Change change) {
            return new Happening(
                    change.on(),
                    false,
                    change.fraction(),
                    "water change",
                    "how much water was changed on " + change.on() + " is not known",
                    change.at().place());
        }

        static Happening of(Given dose) {
            return new Happening(
                    dose.on(),
                    true,
                    dose.milligrams(),
                    dose.written(),
                    "the dose of " + dose.on() + " is not known by weight",
                    dose.place());
        }

        boolean unknown() {
            return amount.isEmpty();
        }

        double fraction() {
            return dose ? 0 : amount.orElse(0);
        }

        double milligrams() {
            return dose ? amount.orElse(0) : 0;
        }
    }
}
