package soundings.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import soundings.findings.Findings;
import soundings.history.Point;
import soundings.log.AsWritten;
import soundings.log.BlockReading;
import soundings.log.ColumnReading;
import soundings.sheet.Book;

/** What {@code inspect} prints: a table a keeper can check in a minute, then every cell set aside with its reason. */
final class Inspection {
    private static final int WIDEST = 34;

    private Inspection() {}

    static List<String> lines(Book book, Findings findings) {
        List<String> lines = new ArrayList<>();
        lines.add(book.name() + ": "
                + book.grids().stream().mapToInt(g -> g.cells().size()).sum() + " cells in "
                + book.grids().size() + (book.grids().size() == 1 ? " sheet" : " sheets"));
        book.caveats().forEach(c -> lines.add("   " + (c.sheet().isEmpty() ? "" : c.sheet() + ": ") + c.message()));
        findings.log().blocks().forEach(block -> block(lines, block));
        List<String> aside = setAside(findings);
        lines.add("");
        lines.add(aside.isEmpty() ? "Every cell was understood." : "Set aside or worth a look (" + aside.size() + "):");
        lines.addAll(aside);
        return lines;
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

    private static List<String> setAside(Findings findings) {
        List<String> lines = new ArrayList<>();
        findings.issues().forEach(i -> lines.add(line(i.where(), i.message())));
        findings.history().tanks().stream()
                .flatMap(t -> t.series().stream())
                .flatMap(s -> s.points().stream())
                .filter(p -> !p.used())
                .map(Inspection::notUsed)
                .forEach(lines::add);
        findings.estimates()
                .doubts()
                .forEach(d -> lines.add(line(
                        Optional.of(d.reading().at()),
                        "not used as " + d.reading().parameter().name() + ": " + d.because())));
        return lines.stream().distinct().toList();
    }

    private static String notUsed(Point point) {
        return line(
                Optional.of(point.reading().at()),
                "not used as " + point.reading().parameter().name() + ": " + point.because());
    }

    private static String line(Optional<AsWritten> where, String message) {
        return "   " + where.map(w -> w.place() + " '" + cut(w.text()) + "': ").orElse("") + cut200(message);
    }

    private static String cut200(String text) {
        String plain = text.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
        return plain.length() <= 200 ? plain : plain.substring(0, 199) + "…";
    }
}
