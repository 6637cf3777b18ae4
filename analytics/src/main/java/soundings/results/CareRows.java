package soundings.results;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Optional;
import soundings.care.Care;
import soundings.care.Clearing;
import soundings.care.Course;
import soundings.care.Given;
import soundings.care.Move;
import soundings.care.NewTank;
import soundings.log.AsWritten;

/** The {@code care} of a results file: new tanks, courses of treatment, moves. */
final class CareRows {
    private final Fields out;

    CareRows(Fields out) {
        this.out = out;
    }

    void write(Care care) throws IOException {
        out.object("care", fields -> {
            fields.list("newTanks", care.newTanks(), this::newTank);
            fields.list("courses", care.courses(), this::course);
            fields.list("moves", care.moves(), this::move);
        });
    }

    private void newTank(NewTank tank) throws IOException {
        out.text("tank", tank.tank());
        out.day("since", tank.since());
        out.truth("sinceStated", tank.sinceStated());
        out.truth("animals", tank.animals());
        out.count("zerosNeeded", tank.zerosNeeded());
        out.count("zerosInARow", tank.zerosInARow());
        out.day("readyOn", tank.readyOn());
        out.constant("lacks", tank.lacks());
        out.list("clearings", tank.clearings(), this::clearing);
    }

    private void clearing(Clearing clearing) throws IOException {
        out.text("parameter", clearing.parameter().id());
        out.constant("standing", clearing.standing());
        out.day("noneSince", clearing.noneSince());
        Optional<LocalDate> gone = clearing.on(i -> i.mid());
        if (gone.isPresent()) {
            out.object("goneOn", fields -> {
                fields.day("mid", gone);
                fields.day("low", clearing.on(i -> i.low()));
                fields.day("high", clearing.on(i -> i.high()));
            });
        }
        out.texts(
                "restsOn",
                clearing.cells().stream().map(AsWritten::place).distinct().toList());
    }

    private void course(Course course) throws IOException {
        out.text("tank", course.tank());
        out.text("animal", course.plan().animal());
        out.text("medicine", course.plan().medicine());
        out.day("started", course.started());
        out.truth("startedStated", course.stated());
        out.day("until", course.until());
        out.truth("running", course.running());
        out.count("day", course.day(course.until()));
        out.list("doses", course.doses(), this::given);
        out.texts("missed", course.missing().stream().map(LocalDate::toString).toList());
        out.number("leftMgPerLitre", course.left());
        out.number("toKeepAtMg", course.toKeepAt());
        out.day("signFreeSince", course.signFree().since());
        out.count("signFreeDays", course.signFree().days());
        out.day("earliestEnd", course.signFree().end());
    }

    private void given(Given dose) throws IOException {
        out.day("date", dose.on());
        out.number("mg", dose.milligrams());
        out.text("text", dose.written());
        out.truth("assumed", dose.assumed());
        out.text("place", dose.place());
    }

    private void move(Move move) throws IOException {
        out.text("animal", move.animal());
        out.text("from", move.from());
        out.text("to", move.to());
        out.day("date", move.on());
        out.truth("planned", move.planned());
        out.number("hours", move.hours());
        out.list("sides", move.sides(), this::side);
        out.text("place", move.place());
    }

    private void side(Move.Side side) throws IOException {
        out.text("parameter", side.parameter().id());
        out.text("unit", side.parameter().unit());
        out.constant("standing", side.standing());
        out.number("difference", side.difference());
        out.number("most", side.most());
        out.texts("restsOn", side.cells().stream().map(AsWritten::place).toList());
    }
}
