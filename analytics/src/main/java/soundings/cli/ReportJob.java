package soundings.cli;

import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import soundings.Analysis;
import soundings.chemistry.Reference;
import soundings.findings.Findings;
import soundings.findings.Provenance;
import soundings.html.HtmlPage;
import soundings.notebook.Notebook;
import soundings.notebook.Notebooks;
import soundings.reference.ReferenceTables;
import soundings.results.ResultsJson;
import soundings.setup.Settings;
import soundings.xlsx.Kept;
import soundings.xlsx.XlsxReport;

/** One run of {@code report} over one log. */
final class ReportJob {
    private final Console console;
    private final Asked asked;
    private final Outputs outputs;
    /** Loaded beside the reading of the log. */
    private final CompletableFuture<Reference> reference = CompletableFuture.supplyAsync(ReferenceTables::load);

    ReportJob(Console console, Asked asked) {
        this.console = console;
        this.asked = asked;
        this.outputs = new Outputs(console);
    }

    /**
     * What the user asked for.
     *
     * @param notebook a name or a file
     * @param setup empty: the one beside the log
     * @param out empty: beside the log
     * @param json empty: none; {@code -} is standard output
     */
    record Asked(
            Settings settings,
            String notebook,
            Optional<Path> setup,
            Optional<Path> out,
            Optional<String> json,
            Optional<String> password) {
        static Asked plain(Settings settings, String notebook, Optional<Path> out) {
            return new Asked(settings, notebook, Optional.empty(), out, Optional.empty(), Optional.empty());
        }
    }

    /** Does one log, or says why not; either way the next one can follow. */
    int runOrSay(Path log) {
        try {
            report(log).written().forEach(written -> console.result(written.toString()));
            return Main.DONE;
        } catch (RuntimeException e) {
            console.progressDone();
            console.problem(Main.problem(e));
            return Main.NOT_DONE;
        }
    }

    /** The files written, the page first, and what was found. */
    record Reported(List<Path> written, Findings findings) {
        Reported {
            written = List.copyOf(written);
        }
    }

    /** Does one log. */
    Reported report(Path log) {
        console.progress("reading " + log.getFileName());
        Opened opened = Opened.of(log, asked.setup(), asked.password());
        Opened.needless(log, asked.password()).ifPresent(console::notice);
        console.progress("working out " + log.getFileName());
        Findings findings = Analysis.of(
                opened.book(),
                opened.setup(),
                provenance(opened),
                new Analysis.Given(
                        joined(reference),
                        asked.settings(),
                        reports(log).notes(asked.settings().month())));
        Checks.somethingToReport(findings, asked.settings().month(), log);
        console.progress("writing the report of " + log.getFileName());
        List<Path> written = write(log, findings);
        console.progressDone();
        return new Reported(written, findings);
    }

    private Provenance provenance(Opened opened) {
        return opened.provenance("--notebook " + asked.notebook()
                + asked.settings().month().map(m -> " --month " + m).orElse(""));
    }

    private List<Path> write(Path log, Findings findings) {
        Notebook pages = Notebooks.run(NotebookFiles.named(asked.notebook()), findings);
        EarlierReports reports = reports(log);
        Path folder = reports.folder();
        String name = reports.name(findings.month());
        // The two renderings share nothing but the notebook; side by side they take the time of the slower one.
        CompletableFuture<Path> xlsx = CompletableFuture.supplyAsync(() -> writeXlsx(reports, findings.month(), pages));
        Path html = outputs.write(folder.resolve(name + ".html"), to -> Text.write(HtmlPage.of(pages), to));
        asked.json().ifPresent(target -> writeJson(target, findings));
        return List.of(html, joined(xlsx));
    }

    /** What people wrote into the report to be replaced goes into the new one; where that can't be read, it is left alone. */
    private Path writeXlsx(EarlierReports reports, YearMonth month, Notebook pages) {
        Path file = reports.folder().resolve(reports.name(month) + ".xlsx");
        Optional<Kept> kept = reports.kept(month);
        Path target =
                kept.isPresent() ? file : file.resolveSibling(Outputs.secondName(String.valueOf(file.getFileName())));
        return outputs.write(target, to -> XlsxReport.write(pages, kept.orElse(Kept.NOTHING), to));
    }

    private EarlierReports reports(Path log) {
        return new EarlierReports(
                asked.out().orElseGet(() -> Folders.of(log)), Opened.stem(log), asked.notebook(), console);
    }

    private static <T> T joined(CompletableFuture<T> other) {
        try {
            return other.join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : e;
        }
    }

    private void writeJson(String target, Findings findings) {
        if (target.equals("-")) {
            console.result(Text.of(to -> ResultsJson.write(findings, to)));
        } else {
            outputs.write(Path.of(target), to -> ResultsJson.write(findings, to));
        }
    }
}
