package soundings.notebook;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import soundings.chemistry.Part.Harm;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;
import soundings.upkeep.Job;
import soundings.upkeep.Pace;
import soundings.upkeep.Upkeep;

/** Jobs put off: how old they are, what is at risk, how long they wait. */
final class JobItems {
    private JobItems() {}

    private static Upkeep upkeep(View view) {
        return view.findings().upkeep();
    }

    /** The sentence to take away; empty where there is nothing to say. */
    static String finding(View view) {
        List<Job> open = upkeep(view).openJobs();
        List<Job> pressing = open.stream().filter(Job::isPressing).toList();
        if (open.isEmpty()) {
            return shown(view).isEmpty() ? "" : "No job is open.";
        }
        String count = Figures.count(open.size(), "job is open", "jobs are open");
        if (pressing.isEmpty()) {
            return Figures.capital(count) + "; none of them is known to put a life at risk.";
        }
        Job first = pressing.get(0);
        String of = open.size() == 1 ? ": " : "; " + pressing.size() + " may cost lives, first of all: ";
        return Figures.capital(count) + of + "\u201c" + first.what() + "\u201d" + age(view, first) + ". At risk: "
                + first.harm().words() + ".";
    }

    private static String age(View view, Job job) {
        String days = job.ageDays(view.asOf()).isPresent()
                ? ", " + Figures.count((int) job.ageDays(view.asOf()).getAsLong(), "day", "days") + " old"
                : "";
        return days + (job.notes().size() > 1 ? " and noted " + job.notes().size() + " times" : "");
    }

    /** Every open job, and those that were done in the month. */
    private static List<Job> shown(View view) {
        return upkeep(view).jobs().stream()
                .filter(j -> j.open()
                        || j.done()
                                .map(YearMonth::from)
                                .filter(view.findings().month()::equals)
                                .isPresent())
                .toList();
    }

    static List<Item> jobs(View view) {
        List<Column> columns = List.of(
                Column.words("Noted"),
                Column.words("Tank"),
                new Column("First on", "", Kind.DATE, 0),
                new Column("Age", "d", Kind.NUMBER, 0),
                new Column("Times", "", Kind.NUMBER, 0),
                Column.words("At risk"),
                Column.words("Why"),
                Column.words("Stands"),
                Column.words("Cells"));
        List<Row> rows = shown(view).stream().map(j -> row(view, j)).toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem(
                        "jobs-put-off", "Jobs put off, what may cost lives first", columns, rows, false, List.of()));
    }

    private static Row row(View view, Job job) {
        boolean open = job.open();
        return new Row(
                List.of(
                        Cell.words(job.what()),
                        Cell.words(job.tank()),
                        job.noticed().<Cell>map(Cell.Day::new).orElse(Cell.NOTHING),
                        open && job.ageDays(view.asOf()).isPresent()
                                ? new Cell.Number(job.ageDays(view.asOf()).getAsLong(), 0, "")
                                : Cell.NOTHING,
                        new Cell.Number(job.notes().size(), 0, ""),
                        new Cell.Words(job.harm().words(), tone(job), ""),
                        Cell.words(Text.sentence(job.risk())),
                        Cell.words(
                                open
                                        ? "open"
                                        : job.done()
                                                .map(d -> "done on " + Figures.day(d))
                                                .orElse("done")),
                        Cell.words(String.join(", ", job.restsOn()))),
                job.restsOn());
    }

    private static Tone tone(Job job) {
        if (!job.open()) {
            return Tone.QUIET;
        }
        return job.isPressing() ? Tone.ACT : job.harm() == Harm.UNKNOWN ? Tone.UNSURE : Tone.WATCH;
    }

    static List<Item> pace(View view) {
        List<Column> columns = List.of(
                Column.words("Month"),
                new Column("Jobs done", "", Kind.NUMBER, 0),
                new Column("Waited, median", "d", Kind.NUMBER, 0),
                new Column("Waited, longest", "d", Kind.NUMBER, 0));
        List<Row> rows = new ArrayList<>();
        upkeep(view)
                .paces()
                .forEach(p -> rows.add(new Row(
                        List.of(
                                Cell.words(Figures.month(p.month())),
                                new Cell.Number(p.done(), 0, ""),
                                new Cell.Number(p.medianDays(), 0, ""),
                                new Cell.Number(p.longestDays(), 0, "")),
                        List.of())));
        return rows.isEmpty()
                ? List.of()
                : List.of(
                        CareBlocks.prose(CareBlocks.block(
                                Prose.Kind.PARAGRAPH, waited(upkeep(view).paces()))),
                        new TableItem(
                                "jobs-pace",
                                "From noticing to doing, by the month of doing",
                                columns,
                                rows,
                                true,
                                List.of()));
    }

    /** The last month in which something was done, and whether that was sooner than in the months before. */
    private static String waited(List<Pace> paces) {
        Pace last = paces.get(paces.size() - 1);
        double before = paces.subList(0, paces.size() - 1).stream()
                .mapToDouble(Pace::medianDays)
                .average()
                .orElse(last.medianDays());
        String than = Math.round(before) == Math.round(last.medianDays())
                ? ""
                : ", " + (last.medianDays() < before ? "sooner" : "later") + " than the "
                        + Figures.count((int) Math.round(before), "day", "days") + " usual in the months before";
        return Figures.count(last.done(), "job", "jobs") + " done in " + Figures.month(last.month()) + " had waited "
                + Figures.count((int) Math.round(last.medianDays()), "day", "days")
                + (last.done() > 1 ? " (the middle one)" : "") + than + ".";
    }
}
