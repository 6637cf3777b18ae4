package soundings.results;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalLong;
import soundings.log.Remark;
import soundings.upkeep.Animals;
import soundings.upkeep.Job;
import soundings.upkeep.Light;
import soundings.upkeep.Testing;
import soundings.upkeep.Upkeep;

/** The {@code upkeep} of a results file: jobs, light, animals, the testing itself. */
final class UpkeepRows {
    private final Fields out;
    private final LocalDate asOf;

    UpkeepRows(Fields out, LocalDate asOf) {
        this.out = out;
        this.asOf = asOf;
    }

    void write(Upkeep upkeep) throws IOException {
        out.object("upkeep", fields -> {
            fields.list("jobs", upkeep.jobs(), this::job);
            fields.list("light", upkeep.lights(), this::light);
            fields.list("animals", upkeep.animals(), this::animals);
            fields.list("tests", upkeep.testing().tests(), this::test);
            fields.list("costs", upkeep.testing().costs(), this::cost);
            fields.list("kits", upkeep.testing().kits(), this::kit);
        });
    }

    private void job(Job job) throws IOException {
        out.text("tank", job.tank());
        out.text("what", job.what());
        out.text("about", job.about());
        out.constant("harm", job.harm());
        out.truth("open", job.open());
        out.day("noticed", job.noticed());
        days("ageDays", job.open() ? job.ageDays(asOf) : OptionalLong.empty());
        out.day("done", job.done());
        days("daysToDo", job.daysToDo());
        out.texts("restsOn", job.restsOn());
    }

    private void days(String name, OptionalLong days) throws IOException {
        if (days.isPresent()) {
            out.count(name, days.getAsLong());
        }
    }

    private void light(Light light) throws IOException {
        out.text("tank", light.tank());
        out.text("place", light.place());
        out.constant("standing", light.standing());
        if (light.last().isPresent()) {
            out.day("date", light.last().get().on());
            out.number("par", light.last().get().par());
        }
        out.number("low", light.low());
        out.number("high", light.high());
        out.number("hours", light.hours());
        out.number("perDay", light.perDay());
        out.texts("restsOn", light.restsOn());
    }

    private void animals(Animals animals) throws IOException {
        out.text("tank", animals.tank());
        remarks("moves", animals.moves());
        out.list("losses", animals.losses(), this::loss);
        remarks("conditions", animals.conditions());
        remarks("feeding", animals.feeding());
    }

    private void remarks(String name, List<Remark> remarks) throws IOException {
        out.list(name, remarks, this::remark);
    }

    private void remark(Remark remark) throws IOException {
        out.day("date", remark.date());
        out.text("text", remark.text());
        out.text("place", remark.at().place());
    }

    private void loss(Animals.Loss loss) throws IOException {
        out.day("date", loss.on());
        out.text("text", loss.noted().text());
        out.text("place", loss.noted().at().place());
        out.list("standingOut", loss.standingOut(), this::shift);
    }

    private void shift(Animals.Shift shift) throws IOException {
        out.text("parameter", shift.parameter().id());
        out.text("unit", shift.parameter().unit());
        out.day("from", shift.from());
        out.day("until", shift.until());
        out.number("change", shift.change());
        out.truth("moved", shift.moved());
        out.truth("outside", shift.outside());
    }

    private void test(Testing.Test test) throws IOException {
        out.text("tank", test.tank());
        out.text("parameter", test.parameter().id());
        out.day("last", test.last());
        out.number("usualDays", test.usualDays());
        out.truth("asked", test.asked());
        out.count("overdueDays", test.overdueDays());
        if (test.enoughEvery().isPresent()) {
            out.count("enoughEveryDays", test.enoughEvery().get());
        }
        out.text("place", test.at());
    }

    private void cost(Testing.Cost cost) throws IOException {
        out.text("parameter", cost.parameter().id());
        out.count("tests", cost.tests());
        out.number("priceEach", cost.priceEach());
        out.text("place", cost.cell());
    }

    private void kit(Testing.Kit kit) throws IOException {
        out.text("parameter", kit.parameter().id());
        out.day("expires", kit.expires());
        out.count("daysLeft", kit.daysLeft());
        out.text("place", kit.cell());
    }
}
