package soundings.care;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import soundings.advice.Action;
import soundings.advice.Action.Urgency;

/** What a running course asks for on the first page: by what was written down and by the keeper's own rule, never a dose of our own. */
final class CourseActions {
    /** A shortfall smaller than this share of the level the keeper set is within what a scale and a bucket do. */
    private static final double SHARE = 0.05;

    /** A home test of a medicine may be wrong by this share; common practice, no source. */
    private static final double TEST_SHARE = 0.15;

    /** What dilution leaves above the level the keeper set by more than this share is no matter of measuring. */
    private static final double OVER_SHARE = 0.2;

    /** So many times the level the keeper set is dangerous at once; common practice, no source. */
    private static final double FAR_OVER = 1.5;

    /** A dose that was due longer ago than this is not made good by a reminder. */
    private static final int DUE_DAYS = 3;

    private static final String ASK =
            "Ask whoever set the course, a vet who treats fish, before anything is given; keep to the label and to local law.";

    private CourseActions() {}

    static List<Action> of(Course course) {
        return Stream.of(
                        worse(course),
                        tooMuch(course),
                        due(course),
                        shortOf(course),
                        testedLow(course),
                        end(course),
                        unwritten(course))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Action> worse(Course course) {
        return Optional.of(course)
                .filter(c -> c.better().answer() == Course.Better.Answer.WORSE)
                .map(c -> action(
                        c,
                        Urgency.NOW,
                        "Ask a vet about " + whom(c) + ": the signs rise",
                        List.of("on " + c.better().days()
                                + " noted days; so clear a rise comes about by chance less than once in twenty"),
                        c.signs().stream().map(s -> s.at().place()).reduce((a, b) -> b).stream()
                                .toList()));
    }

    /** More in the water than the keeper set, by test or else by dilution: nobody should be reminded of the next dose then. */
    private static Optional<Action> tooMuch(Course course) {
        double wanted = course.plan().keepAt().orElse(0);
        double most = (1 + (course.tested().isPresent() ? TEST_SHARE : OVER_SHARE)) * wanted;
        double held = held(course).orElse(0);
        return wanted <= 0 || held <= most
                ? Optional.empty()
                : Optional.of(action(
                        course,
                        held >= FAR_OVER * wanted ? Urgency.NOW : Urgency.SOON,
                        "Give no more " + what(course) + " to " + whom(course)
                                + " before it is tested and whoever set the course is asked",
                        List.of((course.tested().isPresent() ? "the last test read " : "by dilution alone there are ")
                                + mg(held) + " mg/L in the water, and you set " + mg(wanted)
                                + " mg/L; too much can kill, and it is a water change that lowers it"),
                        course.doses().stream().map(Given::place).reduce((a, b) -> b).stream()
                                .toList()));
    }

    private static OptionalDouble held(Course course) {
        return course.tested().isPresent()
                ? OptionalDouble.of(course.tested().get().mgPerLitre())
                : course.left();
    }

    private static Optional<Action> due(Course course) {
        if (tooMuch(course).isPresent()) {
            return Optional.empty();
        }
        return course.missing().stream()
                .filter(d -> !d.isBefore(course.until().minusDays(DUE_DAYS)))
                .reduce((a, b) -> b)
                .map(d -> action(
                        course,
                        Urgency.SOON,
                        "Was " + what(course) + " given on " + d
                                + "? By your own rhythm it was due, and no note says so",
                        List.of("write down every dose: what is left in the water is reckoned from them"),
                        List.of()));
    }

    /** Tested, the water is judged by its test, within what such a test can be wrong by. */
    private static Optional<Action> testedLow(Course course) {
        double wanted = course.plan().keepAt().orElse(0);
        return course.tested()
                .filter(t -> t.mgPerLitre() < (1 - TEST_SHARE) * wanted)
                .map(t -> action(
                        course,
                        Urgency.SOON,
                        "Test " + what(course) + " for " + whom(course)
                                + " again: the last test reads less than you set",
                        List.of(mg(t.mgPerLitre()) + " mg/L on " + t.reading().date() + ", and you set " + mg(wanted)
                                + " mg/L"),
                        List.of(t.reading().at().place())));
    }

    private static Optional<Action> shortOf(Course course) {
        double wanted = course.plan().keepAt().orElse(0);
        double left = course.left().orElse(wanted);
        if (course.toKeepAt().isEmpty() || wanted - left <= SHARE * wanted) {
            return Optional.empty();
        }
        List<String> why = new ArrayList<>();
        why.add("by dilution alone " + mg(left) + " mg/L are left of the " + mg(wanted) + " mg/L you set");
        course.water().stream()
                .filter(s -> s.fraction() > 0)
                .reduce((a, b) -> b)
                .ifPresent(s -> why.add("the water change of " + s.on() + " took out " + mg(s.takenOut()) + " mg"));
        return Optional.of(action(
                course,
                Urgency.SOON,
                "Check the level of " + what(course) + " for " + whom(course) + ": "
                        + mg(course.toKeepAt().getAsDouble()) + " mg short of what you set",
                why,
                course.water().stream().map(Course.Step::place).reduce((a, b) -> b).stream()
                        .toList()));
    }

    private static Optional<Action> end(Course course) {
        Course.SignFree free = course.signFree();
        return free.end().filter(e -> free.since().isPresent()).map(e -> {
            boolean reached = !free.isThin()
                    && free.lastNoted().filter(l -> !l.isBefore(e)).isPresent();
            List<String> why = List.of(
                    free.days() + " days since the last sign, " + free.noted()
                            + " of them noted without one; your rule asks for "
                            + mg(course.plan().signFreeDays().orElse(0)),
                    "a day without a note may have had signs: nobody looked, or nobody wrote");
            return new Action(
                    Urgency.MONTH,
                    course.tank(),
                    Optional.empty(),
                    reached
                            ? "By your rule the course of " + what(course) + " may end: it asked for no longer than "
                                    + e
                            : wait(course, e),
                    why,
                    1,
                    reached ? ASK.replace("before anything is given", "before it is ended") : "",
                    places(course, lastSign(course)));
        });
    }

    /** Known from notes alone: neither the medicine nor the rule for its end is known. */
    private static Optional<Action> unwritten(Course course) {
        return course.stated() || !course.plan().place().isEmpty()
                ? Optional.empty()
                : Optional.of(new Action(
                        Urgency.HANDY,
                        course.tank(),
                        Optional.empty(),
                        "Write the course of treatment into the setup workbook, sheet Treatments",
                        List.of("its notes begin on " + course.started()
                                + "; with the medicine, its amount and your rule for the end written there, what is left in the "
                                + "water and the earliest end can be reckoned"),
                        1,
                        "",
                        course.doses().stream().map(Given::place).distinct().toList()));
    }

    private static String wait(Course course, LocalDate end) {
        String note = "Note every day whether " + whom(course) + " shows a sign: ";
        if (course.signFree().isThin()) {
            return note + "too few days are noted to count on the end by your rule";
        }
        String day =
                end.isAfter(course.until()) ? "on " + end + " at the earliest" : "when the days since are noted too";
        return note + "by your rule the course may end " + day;
    }

    private static List<String> lastSign(Course course) {
        return course.signs().stream().map(s -> s.at().place()).reduce((a, b) -> b).stream()
                .toList();
    }

    private static List<String> places(Course course, List<String> cells) {
        return Stream.concat(cells.stream(), Stream.of(course.plan().place()))
                .filter(p -> !p.isEmpty())
                .toList();
    }

    private static Action action(Course course, Urgency urgency, String what, List<String> why, List<String> cells) {
        return new Action(urgency, course.tank(), Optional.empty(), what, why, 1, ASK, places(course, cells));
    }

    private static String what(Course course) {
        return course.plan().medicine().isEmpty()
                ? "the medicine"
                : course.plan().medicine();
    }

    private static String whom(Course course) {
        return course.plan().animal().isEmpty()
                ? "the treated animal"
                : "the " + course.plan().animal();
    }

    /** Three digits, as the course's own page has them. */
    private static String mg(double value) {
        return BigDecimal.valueOf(value)
                .round(new MathContext(3))
                .stripTrailingZeros()
                .toPlainString();
    }
}
