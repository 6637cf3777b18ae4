package soundings.notebook;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import soundings.care.Course;
import soundings.care.Move;
import soundings.care.NewTank;
import soundings.care.NotReady;
import soundings.chemistry.Parameter;
import soundings.log.Reading;
import soundings.quantity.Interval;

/** New tanks, courses of treatment and moves, each in a sentence or two. */
final class CareWords {
    private CareWords() {}

    static String newTank(NewTank tank) {
        if (tank.lacks() == NewTank.Lacks.NOTHING) {
            return "Ready" + tank.readyOn().map(d -> " since " + Figures.day(d)).orElse("") + " by your rule, on day "
                    + tank.age() + " since it was filled.";
        }
        return "Not ready on day " + tank.age() + ": " + Text.clause(NotReady.because(tank)) + "." + earlier(tank);
    }

    /** The pace of this one beside that of the keeper's others. */
    private static String earlier(NewTank tank) {
        List<String> others = tank.earlier().stream()
                .filter(e -> e.daysToZeros().isPresent())
                .map(e -> e.tank() + " took "
                        + Figures.count((int) e.daysToZeros().getAsLong(), "day", "days"))
                .toList();
        Optional<Long> expected = tank.clearings().stream()
                .limit(2)
                .flatMap(c -> c.on(Interval::mid).stream())
                .max(java.util.Comparator.naturalOrder())
                .map(d -> java.time.temporal.ChronoUnit.DAYS.between(tank.since(), d));
        return others.isEmpty()
                ? ""
                : " To clear tests " + Figures.list(others)
                        + expected.map(d -> "; by its trend this one is clear about day " + d)
                                .orElse("") + ".";
    }

    static String name(Parameter parameter) {
        return switch (parameter.id()) {
            case "ph" -> "pH";
            case "ammonia" -> "ammonia";
            default -> Sentences.lower(parameter.name());
        };
    }

    /** As a row's first cell says it. */
    static String heading(Parameter parameter) {
        return parameter.id().equals("ph") ? "pH" : Figures.capital(name(parameter));
    }

    static String figure(Reading reading) {
        return Figures.amount(reading.scale(), reading.amount());
    }

    static String courseName(Course course) {
        String what = course.plan().medicine().isEmpty()
                ? "Course of treatment"
                : course.plan().medicine();
        String whom =
                course.plan().animal().isEmpty() ? "" : " for " + course.plan().animal();
        return Figures.capital(what) + whom + ", " + course.tank();
    }

    static String course(Course course) {
        long day = course.day(course.until());
        String start = course.running() ? "Day " + day : "Ended on day " + day;
        return start + ": " + signs(course) + ". " + Text.sentence(level(course)) + " " + end(course);
    }

    private static String signs(Course course) {
        Course.SignFree free = course.signFree();
        if (course.signs().isEmpty()) {
            return "no note says whether there were signs";
        }
        String since = free.days() > 0
                ? Figures.count((int) free.days(), "day", "days") + " since the last sign, " + free.noted()
                        + " of them noted without one"
                : "signs on the last day noted";
        return since + "; " + better(course.better());
    }

    static String better(Course.Better better) {
        return switch (better.answer()) {
            case BETTER -> "the signs fall: so clear a fall comes about by chance " + chance(better);
            case WORSE -> "the signs rise: so clear a rise comes about by chance " + chance(better);
            case CANNOT_TELL ->
                "whether it gets better cannot be told: " + better.days()
                        + " noted days scatter this much by themselves";
            case TOO_FEW -> "too few noted days to tell whether it gets better";
        };
    }

    private static String chance(Course.Better better) {
        return better.byChance() < 0.01
                ? "less than once in a hundred"
                : "about " + Math.round(better.byChance() * 100) + " times in a hundred";
    }

    private static String level(Course course) {
        if (course.left().isEmpty()) {
            return "What is left in the water cannot be reckoned: " + course.whyNoLevel();
        }
        OptionalDouble again = course.toKeepAt();
        return "Left in the water by dilution alone: " + mg(course.left().getAsDouble()) + " mg/L"
                + (again.isPresent() && again.getAsDouble() > 0.5
                        ? "; " + mg(again.getAsDouble()) + " mg short of the "
                                + mg(course.plan().keepAt().orElse(0)) + " mg/L you set"
                        : over(course));
    }

    private static String over(Course course) {
        double set = course.plan().keepAt().orElse(Double.POSITIVE_INFINITY);
        return course.left().orElse(0) > 1.05 * set ? "; more than the " + mg(set) + " mg/L you set" : "";
    }

    private static String end(Course course) {
        Optional<LocalDate> end = course.signFree().end();
        return !course.running()
                ? ""
                : end.map(e -> "By your rule of "
                                + Figures.number(course.plan().signFreeDays().orElse(0), 0)
                                + " days without a sign the earliest end is " + Figures.day(e)
                                + unnoted(course.signFree()) + ".")
                        .orElse("The setup names no days without a sign after which it may end.");
    }

    private static String unnoted(Course.SignFree free) {
        long unnoted = free.days() - free.noted();
        return unnoted > 0
                ? ", if the " + (unnoted == 1 ? "day" : unnoted + " days") + " not noted had none either"
                : "";
    }

    /** Two decimals below ten, none from a hundred up. */
    static String mg(double value) {
        return Figures.number(value, value < 10 ? 2 : value < 100 ? 1 : 0);
    }

    static String moveName(Move move) {
        String animal = move.planned() && !move.animal().isEmpty() ? move.animal() + ": " : "";
        return Figures.capital(animal + move.from() + " to " + move.to());
    }

    static String move(Move move) {
        List<String> apart = named(move, Set.of(Move.Standing.APART));
        List<String> alike = named(move, Set.of(Move.Standing.ALIKE));
        List<String> unknown = named(move, Set.of(Move.Standing.UNTESTED, Move.Standing.STALE));
        String open = unknown.isEmpty() ? "" : " Not tested lately in both: " + Figures.list(unknown) + ".";
        if (apart.isEmpty() && alike.isEmpty()) {
            return "The two waters cannot be compared." + open;
        }
        if (apart.isEmpty() && unknown.contains("salinity")) {
            return "Whether an animal may be moved straight over cannot be said: salinity was not tested lately in both."
                    + " What could be compared, " + Figures.list(alike) + ", does not differ too much.";
        }
        String first = apart.isEmpty()
                ? alike(alike, !unknown.isEmpty())
                : (move.planned()
                                ? "Not straight over: too far apart in "
                                : "They differed more than is moved straight over in ")
                        + Figures.list(apart) + over(move) + ".";
        return first + open;
    }

    private static List<String> named(Move move, Set<Move.Standing> standings) {
        return move.sides().stream()
                .filter(s -> standings.contains(s.standing()))
                .map(s -> name(s.parameter()))
                .toList();
    }

    private static String alike(List<String> alike, boolean some) {
        String named = Figures.list(alike);
        return some
                ? "Only " + named + " could be compared; " + (alike.size() == 1 ? "it does" : "they do")
                        + " not differ too much to move straight over."
                : "Nothing differs too much to move straight over: " + named + ".";
    }

    private static String over(Move move) {
        double hours = Math.ceil(move.hours().orElse(0) * 2) / 2;
        if (!move.planned() || hours <= 0) {
            return "";
        }
        return hours > 6
                ? "; bring the waters of the two tanks together over days first, it would take "
                        + Figures.number(hours, 1) + " hours at the usual pace"
                : "; take " + Figures.number(hours, 1) + " hours over it at the usual pace";
    }
}
