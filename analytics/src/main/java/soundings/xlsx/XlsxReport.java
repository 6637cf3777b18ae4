package soundings.xlsx;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import soundings.notebook.Notebook;
import soundings.notebook.Section;
import soundings.notebook.TableItem;
import soundings.notebook.WorkingItem;

/**
 * A notebook as a workbook: a sheet a section in the notebook's order, then the long tables, the workings with live formulas, room for
 * answers, and the numbers of the charts. The same notebook gives the same bytes.
 */
public final class XlsxReport {
    private final Notebook notebook;
    private final Kept kept;
    private final Pages pages;
    private final ChartData charts;
    private final List<List<Section>> chapters;

    private XlsxReport(Notebook notebook, Kept kept, XSSFWorkbook workbook) {
        this.notebook = notebook;
        this.kept = kept;
        this.pages = new Pages(workbook);
        this.chapters = chapters(notebook.sections());
        this.charts = new ChartData(pages.add(ChartData.SHEET, ChartData.WIDTHS));
    }

    public static void write(Notebook notebook, OutputStream out) throws IOException {
        write(notebook, Kept.NOTHING, out);
    }

    /** @param kept what people wrote into the report that this one replaces */
    public static void write(Notebook notebook, Kept kept, OutputStream out) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            SameBytes.nameOn(workbook, notebook.title());
            XlsxReport report = new XlsxReport(notebook, kept, workbook);
            report.fill();
            ByteArrayOutputStream written = new ByteArrayOutputStream(1 << 18);
            workbook.write(written);
            SameBytes.repack(written.toByteArray(), report.pages.rows(), out);
        }
    }

    /**
     * Loads what writing a report needs. A run that reads and works things out first may call this beside it: the library takes
     * longer to wake up than to write.
     */
    public static void prepare() {
        try {
            write(SmallestReport.notebook(), OutputStream.nullOutputStream());
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** Sections of depth 2, each with the deeper ones that follow it. */
    private static List<List<Section>> chapters(List<Section> sections) {
        List<List<Section>> chapters = new ArrayList<>();
        for (Section section : sections) {
            if (section.depth() == 2 || chapters.isEmpty()) {
                chapters.add(new ArrayList<>());
            }
            chapters.get(chapters.size() - 1).add(section);
        }
        return chapters;
    }

    private void fill() {
        chapters.forEach(this::chapter);
        tables();
        List<WorkingItem> workings = notebook.workings().toList();
        if (!workings.isEmpty()) {
            WorkingsPage.write(pages, workings);
        }
        charts.finish(pages);
        pages.link();
        pages.draw();
        pages.workbook().setForceFormulaRecalculation(true);
        pages.workbook().setActiveSheet(0);
    }

    private void chapter(List<Section> parts) {
        Page page = SectionPage.open(pages, parts);
        if (parts.equals(chapters.get(0))) {
            page.line(notebook.title(), Face.Part.TITLE);
            page.line(notebook.subtitle(), Face.Part.SUBTITLE);
        }
        SectionPage.write(page, pages, charts, parts);
        page.print(pages.workbook(), -1);
    }

    private void tables() {
        List<TableItem> all = chapters.stream().flatMap(SectionPage::longTables).toList();
        AnswerPages.write(pages, all.stream().filter(SectionPage::isAnswered).toList(), kept);
        all.stream().filter(t -> !SectionPage.isAnswered(t)).forEach(t -> TablePage.write(pages, t.caption(), t));
    }
}
