package soundings.care;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import soundings.care.Move.Standing;
import soundings.care.Plans.PlannedMove;
import soundings.chemistry.Parameter;
import soundings.history.History;
import soundings.history.Note;
import soundings.history.TankHistory;
import soundings.log.Reading;
import soundings.setup.Setup;

/** Finds moves, planned in the setup or noted in the report's month, and compares the two waters. */
final class Moves {
    private static final List<String> COMPARED =
            List.of("temperature", "salinity", "ph", "alkalinity", "nitrate", "phosphate");

    private Moves() {}

    static List<Move> of(History history, List<PlannedMove> planned, List<Course> courses, Rules rules) {
        List<Move> all = new ArrayList<>();
        for (PlannedMove move : planned) {
            Optional<TankHistory> from = Where.find(history, move.from());
            Optional<TankHistory> to = Where.find(history, move.to());
            LocalDate on = move.on().orElse(history.asOf());
            boolean past = YearMonth.from(on).isBefore(YearMonth.from(history.asOf()));
            if (from.isPresent() && to.isPresent() && !past) {
                all.add(move(history, move.animal(), from.get(), to.get(), on, true, move.place(), courses, rules));
            }
        }
        for (TankHistory tank : history.tanks()) {
            all.addAll(noted(history, tank, courses, rules));
        }
        all.sort(Comparator.comparing(Move::on).thenComparing(Move::place));
        return all;
    }

    /** A note of a move that names the other tank. */
    private static List<Move> noted(History history, TankHistory tank, List<Course> courses, Rules rules) {
        List<Move> all = new ArrayList<>();
        for (Note note : Note.of(tank)) {
            boolean now = YearMonth.from(note.on()).equals(YearMonth.from(history.asOf()))
                    && !note.on().isAfter(history.asOf());
            Optional<TankHistory> other =
                    now && note.kinds().contains("moved") ? named(history, tank, note) : Optional.empty();
            if (other.isPresent()) {
                boolean here = cameHere(history, other.get(), note.text());
                TankHistory from = here ? other.get() : tank;
                TankHistory to = here ? tank : other.get();
                all.add(move(
                        history,
                        note.text(),
                        from,
                        to,
                        note.on(),
                        false,
                        note.at().place(),
                        courses,
                        rules));
            }
        }
        return all;
    }

    private static Optional<TankHistory> named(History history, TankHistory tank, Note note) {
        List<TankHistory> named = history.tanks().stream()
                .filter(t -> !t.tank().equals(tank.tank()) && !t.tank().isBlank())
                .filter(t -> names(history, t)
                        .anyMatch(n -> word("", n).matcher(note.text()).find()))
                .toList();
        return named.size() == 1 ? Optional.of(named.get(0)) : Optional.empty();
    }

    private static Stream<String> names(History history, TankHistory tank) {
        Stream<String> others = history.setup().findTank(tank.tank()).map(Setup.Tank::writtenAs).stream()
                .flatMap(List::stream);
        return Stream.concat(Stream.of(tank.tank()), others).filter(n -> !n.isBlank());
    }

    private static boolean cameHere(History history, TankHistory other, String text) {
        return names(history, other)
                .anyMatch(n ->
                        word("(?:from|out of)\\s+(?:the\\s+)?", n).matcher(text).find());
    }

    private static Pattern word(String before, String name) {
        return Pattern.compile(
                "(?<![\\p{L}\\d])" + before + Pattern.quote(name) + "(?![\\p{L}\\d])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    private static Move move(
            History history,
            String animal,
            TankHistory from,
            TankHistory to,
            LocalDate on,
            boolean planned,
            String place,
            List<Course> courses,
            Rules rules) {
        LocalDate day = on.isAfter(history.asOf()) ? history.asOf() : on;
        List<Move.Side> sides = COMPARED.stream()
                .flatMap(id -> side(from, to, rules.parameter(id), day, rules).stream())
                .toList();
        List<Move.Medicine> medicines = courses.stream()
                .filter(c -> c.tank().equals(from.tank()) || c.tank().equals(to.tank()))
                .flatMap(c -> medicine(c, day).stream())
                .toList();
        OptionalDouble hours = sides.stream()
                .filter(s -> s.standing() == Standing.APART)
                .mapToDouble(s -> s.hours().orElse(0))
                .max();
        return new Move(animal, from.tank(), to.tank(), on, planned, sides, medicines, hours, place);
    }

    private static Optional<Move.Side> side(
            TankHistory from, TankHistory to, Parameter parameter, LocalDate day, Rules rules) {
        Optional<Double> most = rules.straightOver(parameter.id());
        if (most.isEmpty()) {
            return Optional.empty();
        }
        Optional<Reading> one = Tests.last(from, parameter, day);
        Optional<Reading> other = Tests.last(to, parameter, day);
        if (one.isEmpty() || other.isEmpty()) {
            OptionalDouble none = OptionalDouble.empty();
            return Optional.of(new Move.Side(parameter, one, other, none, most.get(), none, Standing.UNTESTED));
        }
        return Optional.of(compared(parameter, one.get(), other.get(), most.get(), day, rules));
    }

    private static Move.Side compared(
            Parameter parameter, Reading from, Reading to, double most, LocalDate day, Rules rules) {
        double difference = to.amount().about() - from.amount().about();
        boolean stale = Math.max(Tests.apart(from.date(), day), Tests.apart(to.date(), day)) > rules.days("stale_days");
        boolean apart = Math.abs(difference) > most + 1e-9;
        return new Move.Side(
                parameter,
                Optional.of(from),
                Optional.of(to),
                OptionalDouble.of(difference),
                most,
                apart
                        ? OptionalDouble.of(Math.abs(difference) / rules.perHour(parameter.id()))
                        : OptionalDouble.empty(),
                stale ? Standing.STALE : apart ? Standing.APART : Standing.ALIKE);
    }

    /** What a course has put into the water by that day. */
    private static Optional<Move.Medicine> medicine(Course course, LocalDate day) {
        String name =
                course.plan().medicine().isEmpty() ? "medicine" : course.plan().medicine();
        if (course.started().isAfter(day)) {
            return Optional.empty();
        }
        if (!course.whyNoLevel().isEmpty()) {
            return Optional.of(new Move.Medicine(course.tank(), name, OptionalDouble.empty()));
        }
        OptionalDouble left = course.water().stream()
                .filter(s -> !s.on().isAfter(day))
                .mapToDouble(Course.Step::after)
                .reduce((a, b) -> b);
        return left.isPresent() && left.getAsDouble() > 0
                ? Optional.of(new Move.Medicine(course.tank(), name, left))
                : Optional.empty();
    }
}
