package soundings.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import soundings.findings.Findings;
import soundings.log.AsWritten;
import soundings.log.BlockReading;
import soundings.log.ColumnReading;
import soundings.log.Issue;
import soundings.log.Log;
import soundings.log.Reading;
import soundings.sheet.Book;
import soundings.sheet.Book.Caveat;

/** What {@code inspect} prints: a table a keeper can check in a minute, then every cell set aside with its reason. */
final class Inspection {
    private static final int WIDEST = 34;
    private static final int MOST_CAVEATS = 8;
    /** Places told beside the first, where many cells have the same fault. */
    private static final int MOST_PLACES = 3;

    private Inspection() {}

    static List<String> lines(Book book, Findings findings) {
        List<String> lines = new ArrayList<>();
        lines.add(book.name() + ": "
                + book.grids().stream().mapToInt(g -> g.cells().size()).sum() + " cells in "
                + book.grids().size() + (book.grids().size() == 1 ? " sheet" : " sheets"));
        caveats(lines, book.caveats());
        if (blank(findings.log())) {
            lines.add("");
            lines.add("Its headings are understood; no row is filled in yet.");
            return lines;
        }
        findings.log().blocks().forEach(block -> block(lines, block));
        List<Aside> aside = setAside(findings);
        lines.add("");
        lines.add(aside.isEmpty() ? "Every cell was understood." : "Set aside or worth a look (" + aside.size() + "):");
        lines.addAll(gathered(aside));
        return lines;
    }

    private static void caveats(List<String> lines, List<Caveat> caveats) {
        caveats.stream()
                .limit(MOST_CAVEATS)
                .map(c -> "   " + (c.sheet().isEmpty() ? "" : c.sheet() + ": ") + c.message())
                .forEach(lines::add);
        int more = caveats.size() - MOST_CAVEATS;
        if (more > 0) {
            lines.add("   and " + more + " more about the file");
        }
    }

    /** Tables with headings that are known and nothing below them. */
    private static boolean blank(Log log) {
        return log.saysNothing()
                && log.blocks().stream().anyMatch(Inspection::headed)
                && log.blocks().stream()
                        .filter(Inspection::headed)
                        .allMatch(b -> b.columns().stream().allMatch(c -> c.cells() == 0));
    }

    /** Whether at least three columns are known by their headings. */
    private static boolean headed(BlockReading block) {
        return block.columns().stream()
                        .filter(c -> !c.meaning().equals("unknown") && c.sure() > 0.5)
                        .count()
                >= 3;
    }

    private static void block(List<String> lines, BlockReading block) {
        lines.add("");
        lines.add(block.sheet() + " " + block.region() + ": " + block.layout() + " ("
                + (block.layout().equals("no log") ? "" : percent(block.sure()) + " sure; ") + block.because() + ")");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("cell", "header", "read as", "unit", "tank", "sure", "cells", "first", "last", "for example"));
        block.columns().forEach(c -> rows.add(row(c)));
        lines.addAll(aligned(rows));
    }

    private static List<String> row(ColumnReading c) {
        String inferred = c.inferred().isEmpty()
                ? ""
                : " (inferred: "
                        + c.inferred().stream()
                                .map(i -> i.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                                .sorted()
                                .collect(Collectors.joining(", "))
                        + ")";
        return List.of(
                c.headerCell(),
                c.header(),
                c.meaning() + inferred,
                c.unit(),
                c.tank(),
                percent(c.sure()),
                Integer.toString(c.cells()),
                day(c.first()),
                day(c.last()),
                String.join(" · ", c.samples()));
    }

    private static String day(Optional<LocalDate> day) {
        return day.map(LocalDate::toString).orElse("");
    }

    private static String percent(double share) {
        return Math.round(share * 100) + " %";
    }

    private static List<String> aligned(List<List<String>> rows) {
        int columns = rows.get(0).size();
        int[] width = new int[columns];
        for (List<String> row : rows) {
            for (int i = 0; i < columns; i++) {
                width[i] = Math.max(width[i], cut(row.get(i)).length());
            }
        }
        return rows.stream()
                .map(row -> {
                    StringBuilder line = new StringBuilder("   ");
                    for (int i = 0; i < columns; i++) {
                        String cell = cut(row.get(i));
                        line.append(cell).append(" ".repeat(width[i] - cell.length() + 2));
                    }
                    return line.toString().stripTrailing();
                })
                .toList();
    }

    private static String cut(String text) {
        String plain = text.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
        return plain.length() <= WIDEST ? plain : plain.substring(0, WIDEST - 1) + "…";
    }

    /** One cell and what was made of it. */
    private record Aside(Optional<AsWritten> where, String message, Issue.Severity weight) {}

    private static List<Aside> setAside(Findings findings) {
        List<Aside> all = new ArrayList<>();
        findings.issues().forEach(i -> all.add(new Aside(i.where(), i.message(), i.severity())));
        findings.history().tanks().stream()
                .flatMap(t -> t.series().stream())
                .flatMap(s -> s.points().stream())
                .filter(p -> !p.used())
                .forEach(p -> all.add(notUsed(p.reading(), p.because())));
        findings.estimates().doubts().forEach(d -> all.add(notUsed(d.reading(), d.because())));
        return all.stream().distinct().toList();
    }

    private static Aside notUsed(Reading reading, String because) {
        return new Aside(
                Optional.of(reading.at()),
                "not used as " + reading.parameter().name() + ": " + because,
                Issue.Severity.WARNING);
    }

    /** What matters most first; the same fault in many cells is one line. */
    private static List<String> gathered(List<Aside> all) {
        return all.stream()
                .sorted(Comparator.comparing(Aside::weight).reversed())
                .collect(Collectors.groupingBy(Aside::message, LinkedHashMap::new, Collectors.toList()))
                .values()
                .stream()
                .map(Inspection::line)
                .toList();
    }

    private static String line(List<Aside> same) {
        List<AsWritten> cells =
                same.stream().flatMap(a -> a.where().stream()).distinct().toList();
        String first = cells.stream()
                .findFirst()
                .map(w -> w.place() + " '" + cut(w.text()) + "'")
                .orElse("");
        String others = cells.stream()
                .skip(1)
                .limit(MOST_PLACES)
                .map(AsWritten::place)
                .map(", "::concat)
                .collect(Collectors.joining());
        int more = cells.size() - 1 - MOST_PLACES;
        return "   " + first + others + (more > 0 ? " and " + more + " more" : "") + (first.isEmpty() ? "" : ": ")
                + cut200(same.get(0).message());
    }

    private static String cut200(String text) {
        String plain = text.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
        return plain.length() <= 200 ? plain : plain.substring(0, 199) + "…";
    }
}
