package soundings.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import soundings.html.ClubPage;
import soundings.setup.Settings;

/** Every log of a folder, a few side by side, and a page that tells the mentor who needs a look first. One log per thread is held at a time. */
final class ClubRun {
    private static final int FEWEST_THREADS = 2;
    private static final int MOST_THREADS = 4;

    private final Console console;
    private final Settings settings;
    private final ReportJob job;
    private final Optional<Path> out;

    ClubRun(Console console, Settings settings, ReportJob job, Optional<Path> out) {
        this.console = console;
        this.settings = settings;
        this.job = job;
        this.out = out;
    }

    int run(Path folder) {
        List<Path> logs = logs(folder);
        List<ClubLine> lines = lines(logs);
        Path index = index(out.orElse(folder), folder, lines);
        console.progressDone();
        console.result(index.toString());
        return lines.stream().allMatch(l -> l.problem().isEmpty()) ? Main.DONE : Main.NOT_DONE;
    }

    private static List<Path> logs(Path folder) {
        try {
            List<Path> logs = LogNames.in(folder);
            if (logs.isEmpty()) {
                throw new CannotDo(folder + ": there is no log in this folder (xlsx, xlsm, xls, ods, csv or tsv)");
            }
            return logs;
        } catch (IOException e) {
            throw new CannotDo(folder + ": the folder cannot be read", e);
        }
    }

    private List<ClubLine> lines(List<Path> logs) {
        Map<String, Path> byStem = new LinkedHashMap<>();
        int threads = Math.max(
                FEWEST_THREADS, Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors()));
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Future<ClubLine>> running = new ArrayList<>();
            for (Path log : logs) {
                Path other = byStem.putIfAbsent(Opened.stem(log), log);
                running.add(pool.submit(() -> other == null ? one(log) : sameName(log, other)));
            }
            return collected(running);
        } finally {
            pool.shutdownNow();
        }
    }

    /** Two logs of one name would write one report over the other's. */
    private ClubLine sameName(Path log, Path other) {
        return failed(log, "its report would overwrite that of " + other.getFileName() + "; rename one of the two");
    }

    private List<ClubLine> collected(List<Future<ClubLine>> running) {
        List<ClubLine> lines = new ArrayList<>();
        for (Future<ClubLine> future : running) {
            try {
                lines.add(future.get());
            } catch (ExecutionException e) {
                throw new IllegalStateException("a log's failure is caught where it happens", e.getCause());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new CannotDo("stopped after " + lines.size() + " logs", e);
            }
        }
        return lines;
    }

    private ClubLine one(Path log) {
        try {
            ReportJob.Reported reported = job.report(log);
            reported.written().forEach(path -> console.result(path.toString()));
            return ClubLine.of(log, reported.written().get(0), reported.findings(), settings.today());
        } catch (RuntimeException e) {
            console.progressDone();
            return failed(log, Main.problem(e));
        }
    }

    private ClubLine failed(Path log, String problem) {
        String name = String.valueOf(log.getFileName());
        console.problem(problem.contains(name) ? problem : name + ": " + problem);
        return ClubLine.failed(log, problem);
    }

    private Path index(Path where, Path folder, List<ClubLine> lines) {
        YearMonth month = settings.month()
                .or(() -> lines.stream().flatMap(l -> l.month().stream()).max(Comparator.naturalOrder()))
                .orElse(YearMonth.from(settings.today()));
        List<ClubPage.Line> shown =
                lines.stream().sorted(ClubLine.FIRST_LOOK).map(ClubRun::shown).toList();
        String name = String.valueOf(folder.toAbsolutePath().normalize().getFileName());
        return new Outputs(console)
                .write(
                        where.resolve("club index " + month + ".html"),
                        to -> Text.write(ClubPage.of(name, month, shown), to));
    }

    private static ClubPage.Line shown(ClubLine line) {
        return new ClubPage.Line(
                line.log(),
                line.page().map(page -> String.valueOf(page.getFileName())).orElse(""),
                line.month(),
                line.needsALook(),
                line.why(),
                line.now(),
                line.soon(),
                line.notUnderstood(),
                line.sinceTest());
    }
}
