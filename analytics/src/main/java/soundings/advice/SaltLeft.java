package soundings.advice;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soundings.chemistry.Creep;
import soundings.chemistry.Recipes;
import soundings.chemistry.Reference;
import soundings.chemistry.StockSolution;
import soundings.history.DoseCourse;
import soundings.quantity.Interval;
import soundings.setup.Setup;

/** What a month's doses leave behind in the water once animals have taken what they use; only of additives whose recipe is known. */
final class SaltLeft {
    private SaltLeft() {}

    /** Empty where nothing was dosed, the volume is not known, or no recipe is. */
    static Optional<Insight> of(Matter any) {
        List<Given> given = any.tank().doses().stream()
                .map(course -> given(course, any))
                .filter(g -> g.millilitres() > 0)
                .toList();
        List<Creep.Dosed> known = given.stream()
                .flatMap(g -> g.solution().stream().map(s -> new Creep.Dosed(s, g.millilitres())))
                .toList();
        if (known.isEmpty() || any.tank().litres().isEmpty()) {
            return Optional.empty();
        }
        Creep creep = Creep.of(known, any.tank().litres().getAsDouble(), any.reference());
        return Optional.of(new Insight(
                any.tank().tank(),
                Insight.Kind.SALT_OF_DOSES,
                "salinity this month's doses add",
                Optional.of(new Interval(creep.salinity(), creep.salinity(), creep.salinity())),
                "psu",
                says(creep, given),
                known(given)));
    }

    /** One additive in the month reported: how much went in, what is in it, and the cells that say so. */
    private record Given(String name, Optional<StockSolution> solution, double millilitres, List<String> cells) {}

    private static Given given(DoseCourse course, Matter any) {
        LocalDate last = any.history().asOf();
        LocalDate first = YearMonth.from(last).atDay(1);
        double steady = course.steps().stream()
                .mapToDouble(s -> s.mlPerDay() * days(s, first, last.plusDays(1)))
                .sum();
        double once = course.oneOffs().stream()
                .filter(o -> !o.on().isBefore(first) && !o.on().isAfter(last))
                .mapToDouble(DoseCourse.OneOff::ml)
                .sum();
        List<String> cells =
                course.additive().stream().map(Setup.Additive::cell).toList();
        return new Given(course.name(), solution(course, any.reference()), steady + once, cells);
    }

    /** Days of the step from {@code first} to before {@code end}. */
    private static long days(DoseCourse.Step step, LocalDate first, LocalDate end) {
        LocalDate from = step.from().isBefore(first) ? first : step.from();
        LocalDate until = step.until().filter(u -> u.isBefore(end)).orElse(end);
        return Math.max(0, ChronoUnit.DAYS.between(from, until));
    }

    private static Optional<StockSolution> solution(DoseCourse course, Reference reference) {
        return course.additive().stream()
                .map(Setup.Additive::recipe)
                .filter(recipe -> !recipe.isBlank())
                .findFirst()
                .flatMap(recipe ->
                        Recipes.read(recipe, reference).match(u -> Optional.of(u.solution()), n -> Optional.empty()))
                .filter(StockSolution::complete);
    }

    private static String says(Creep creep, List<Given> given) {
        List<String> parts = new ArrayList<>();
        parts.add("sodium " + Phrases.number(creep.sodium(), 0) + " mg/L, chloride "
                + Phrases.number(creep.chloride(), 0) + " mg/L and sulfate " + Phrases.number(creep.sulfate(), 0)
                + " mg/L stay behind when what was dosed is used up; only water changes take them out");
        List<String> unknown = given.stream()
                .filter(g -> g.solution().isEmpty())
                .map(Given::name)
                .toList();
        if (!unknown.isEmpty()) {
            parts.add("not counted, as their recipe is not in the setup workbook: " + String.join(", ", unknown));
        }
        return String.join("; ", parts);
    }

    private static List<String> known(List<Given> given) {
        return given.stream()
                .filter(g -> g.solution().isPresent())
                .flatMap(g -> g.cells().stream())
                .filter(c -> !c.isEmpty())
                .distinct()
                .toList();
    }
}
