package soundings.xlsx;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * How a sheet comes out on paper: one page wide, upright where that can still be read, and cut only where nothing is torn. The scale is
 * a number and not "fit to width", under which spreadsheets leave breaks of our own out. What fits here fits A4 and US Letter.
 *
 * @param percent of its size on the screen
 */
record Paper(boolean landscape, int percent) {
    /** The lesser of the two papers' sides, in points. */
    private static final double SHORT_SIDE = 595;

    private static final double LONG_SIDE = 792;
    private static final double INCH = 72;
    private static final double SIDE_INCHES = 0.5;
    private static final double TOP_INCHES = 0.5;
    private static final double BOTTOM_INCHES = 0.7;
    /** Below this upright letters are too small to be read: 10 points come out as 7. */
    private static final int SMALLEST_UPRIGHT = 70;

    private static final int SMALLEST = 10;
    /** What is kept in hand for letters and printers that take more. */
    private static final double IN_HAND = 0.97;

    /** Rows that stay on one page, from the first to the last. */
    record Together(int first, int last) {}

    /** @param characters across the sheet */
    static Paper of(int characters) {
        int upright = percent(SHORT_SIDE, characters);
        return upright >= SMALLEST_UPRIGHT
                ? new Paper(false, upright)
                : new Paper(true, percent(LONG_SIDE, characters));
    }

    private static int percent(double side, int characters) {
        double printed = (side - 2 * SIDE_INCHES * INCH) * IN_HAND;
        return Math.max(SMALLEST, Math.min(100, (int)
                (100 * printed / (Math.max(1, characters) * Lettering.MOST_COLUMN))));
    }

    /** How many points of rows a page takes. */
    double rowPoints() {
        double side = landscape ? SHORT_SIDE : LONG_SIDE;
        return (side - (TOP_INCHES + BOTTOM_INCHES) * INCH) * IN_HAND * 100 / percent;
    }

    void applyTo(XSSFSheet sheet) {
        sheet.setFitToPage(false);
        PrintSetup setup = sheet.getPrintSetup();
        setup.setPaperSize(PrintSetup.A4_PAPERSIZE);
        setup.setLandscape(landscape);
        setup.setScale((short) percent);
        sheet.setMargin(PageMargin.LEFT, SIDE_INCHES);
        sheet.setMargin(PageMargin.RIGHT, SIDE_INCHES);
        sheet.setMargin(PageMargin.TOP, TOP_INCHES);
        sheet.setMargin(PageMargin.BOTTOM, BOTTOM_INCHES);
        sheet.setMargin(PageMargin.FOOTER, TOP_INCHES / 2);
    }

    /** The rows a page ends with: what would be torn goes to the next page, unless it is taller than a page. */
    List<Integer> ends(List<Double> heights, List<Together> kept) {
        List<Integer> ends = new ArrayList<>();
        double used = 0;
        for (int row = 0; row < heights.size(); row++) {
            double needed = needed(row, heights, kept);
            if (used > 0 && used + needed > rowPoints()) {
                ends.add(row - 1);
                used = 0;
            }
            used += heights.get(row);
        }
        return ends;
    }

    private double needed(int row, List<Double> heights, List<Together> kept) {
        return kept.stream()
                .filter(k -> k.first() == row)
                .mapToDouble(k -> heights.subList(row, Math.min(heights.size(), k.last() + 1)).stream()
                        .mapToDouble(Double::doubleValue)
                        .sum())
                .filter(h -> h <= rowPoints())
                .max()
                .orElse(heights.get(row));
    }
}
