package soundings.xlsx;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soundings.notebook.Figures;
import soundings.notebook.Tone;
import soundings.notebook.WorkingItem;

/** Every working on one sheet, step by step; a step that follows from others is a formula over their cells. */
final class WorkingsPage {
    private static final List<String> HEADERS = List.of("What", "Value", "Unit", "How", "From");
    private static final List<Integer> WIDTHS = List.of(36, 13, 14, 42, 24);

    private final Page page;
    private final Faces faces;

    private WorkingsPage(Page page) {
        this.page = page;
        this.faces = page.faces();
    }

    static void write(Pages pages, List<WorkingItem> workings) {
        Page page = pages.add("Workings", WIDTHS);
        WorkingsPage writing = new WorkingsPage(page);
        page.line("How the figures were worked out", Face.Part.HEADING);
        page.line(
                "Figures in bold follow from those above them and recalculate: change a number to see what it does.",
                Face.Part.QUIET);
        int header = writing.header();
        for (WorkingItem working : workings) {
            page.rows().next();
            page.line(working.caption(), Face.Part.CAPTION);
            pages.standsHere(working.id(), page);
            writing.lines(working);
            page.line(working.result(), Face.Part.PROSE);
        }
        page.sheet().createFreezePane(0, header + 1);
        page.print(pages.workbook(), header);
    }

    private int header() {
        page.rows().next();
        for (int c = 0; c < HEADERS.size(); c++) {
            page.rows().words(c, HEADERS.get(c), faces.of(Face.Part.HEADER));
        }
        return page.rows().row();
    }

    private void lines(WorkingItem working) {
        Map<String, Arithmetic.Named> names = new HashMap<>();
        Map<String, String> labels = new HashMap<>();
        for (WorkingItem.Line line : working.lines()) {
            line(line, names, labels);
            names.put(line.id(), new Arithmetic.Named("B" + page.rows().rowCount(), line.value()));
            labels.put(line.id(), line.label());
        }
    }

    private void line(WorkingItem.Line line, Map<String, Arithmetic.Named> names, Map<String, String> labels) {
        Optional<Arithmetic.Formula> formula =
                line.formula().isBlank() ? Optional.empty() : Arithmetic.of(line.formula(), names, line.value());
        String how = inWords(line.formula(), labels);
        SheetRows rows = page.rows().next(Lettering.height(lines(line, how), Face.Part.BODY));
        words(0, line.label(), Tone.PLAIN);
        Face.Part part = line.formula().isBlank() ? Face.Part.BODY : Face.Part.RESULT;
        int style = faces.of(
                Figures.isShare(line.unit())
                        ? Face.share(part, line.decimals() - 2)
                        : Face.number(part, line.decimals(), ""));
        if (formula.isPresent()) {
            rows.formula(1, formula.get(), line.value(), style);
        } else {
            rows.number(1, line.value(), style);
        }
        words(2, Figures.unit(line.unit()), Tone.PLAIN);
        words(3, how, Tone.QUIET);
        words(4, line.from(), Tone.QUIET);
    }

    private static int lines(WorkingItem.Line line, String how) {
        return Math.max(
                Lettering.lines(line.label(), WIDTHS.get(0)),
                Math.max(Lettering.lines(how, WIDTHS.get(3)), Lettering.lines(line.from(), WIDTHS.get(4))));
    }

    private void words(int column, String text, Tone tone) {
        page.rows().words(column, text, faces.of(Face.words(Face.Part.BODY, tone, text)));
    }

    /** The formula as it reads aloud: labels for names, signs of arithmetic. */
    private static String inWords(String formula, Map<String, String> labels) {
        return java.util.regex.Pattern.compile("[A-Za-z_][A-Za-z0-9_.]*")
                .matcher(formula)
                .replaceAll(m -> java.util.regex.Matcher.quoteReplacement(labels.getOrDefault(m.group(), m.group())))
                .replace("*", "\u00d7")
                .replace("/", "\u00f7");
    }
}
