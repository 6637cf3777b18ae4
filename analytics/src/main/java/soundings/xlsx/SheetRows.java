package soundings.xlsx;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import soundings.quantity.Finite;
import soundings.sheet.CellRef;

/**
 * The rows of one sheet, written straight as SpreadsheetML (ECMA-376 part 1, 18.3.1): a report has tens of thousands of cells and each
 * is written once. Words are always strings; a formula comes from {@link Arithmetic} only.
 */
final class SheetRows {
    /** Day 0 of the 1900 date system for every date after its leap-year flaw, ECMA-376 part 1, 18.17.4.1. */
    private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

    /** {@code _x0041_} in a text would be read as the letter A: ST_Xstring, ECMA-376 part 1, 22.9.2.19. */
    private static final Pattern ESCAPE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

    private final StringBuilder xml = new StringBuilder(4096);
    private int row = -1;
    private boolean open;
    private int columns = 1;
    private final List<Double> heights = new ArrayList<>();

    static double serial(LocalDate day) {
        return ChronoUnit.DAYS.between(DAY_ZERO, day);
    }

    /** The day of a serial number that nobody formatted as a date; none outside 1982 to 2064. */
    static Optional<LocalDate> findDay(double serial) {
        return serial >= 30_000 && serial < 60_000 ? Optional.of(DAY_ZERO.plusDays((long) serial)) : Optional.empty();
    }

    /** The row being written, counted from zero. */
    int row() {
        return row;
    }

    int rowCount() {
        return row + 1;
    }

    int columnCount() {
        return columns;
    }

    /** The heights of all rows so far, in points. */
    List<Double> heights() {
        return List.copyOf(heights);
    }

    /** A row of one line. */
    SheetRows next() {
        return next(Lettering.height(1, Face.Part.BODY));
    }

    /** A row of that height, in points. */
    SheetRows next(double height) {
        end();
        row++;
        heights.add(height);
        xml.append("<row r=\"")
                .append(row + 1)
                .append("\" ht=\"")
                .append(height)
                .append("\" customHeight=\"1\">");
        open = true;
        return this;
    }

    SheetRows words(int column, String text, int style) {
        if (text.isEmpty()) {
            return blank(column, style);
        }
        String space =
                text.strip().length() == text.length() && text.indexOf('\n') < 0 ? "" : " xml:space=\"preserve\"";
        cell(column, style).append(" t=\"inlineStr\"><is><t").append(space).append('>');
        Tags.escape(xml, ESCAPE.matcher(CellText.holdable(text)).replaceAll("_x005F_"));
        xml.append("</t></is></c>");
        return this;
    }

    SheetRows number(int column, double value, int style) {
        cell(column, style).append("><v>").append(Finite.checked(value)).append("</v></c>");
        return this;
    }

    SheetRows day(int column, LocalDate day, int style) {
        return number(column, serial(day), style);
    }

    /** A formula with the value we worked out ourselves, shown until somebody recalculates. */
    SheetRows formula(int column, Arithmetic.Formula formula, double value, int style) {
        cell(column, style).append("><f>");
        Tags.escape(xml, formula.text());
        xml.append("</f><v>").append(Finite.checked(value)).append("</v></c>");
        return this;
    }

    SheetRows blank(int column, int style) {
        cell(column, style).append("/>");
        return this;
    }

    private StringBuilder cell(int column, int style) {
        columns = Math.max(columns, column + 1);
        return xml.append("<c r=\"")
                .append(CellRef.letters(column))
                .append(row + 1)
                .append("\" s=\"")
                .append(style)
                .append('"');
    }

    private void end() {
        if (open) {
            xml.append("</row>");
            open = false;
        }
    }

    /** The sheet's part with these rows in it. */
    String within(String frame) {
        end();
        String area = "A1:" + new CellRef(Math.max(0, row), columns - 1);
        return frame.replaceFirst("<dimension ref=\"[^\"]*\"/>", "<dimension ref=\"" + area + "\"/>")
                .replace("<sheetData/>", "<sheetData>" + xml + "</sheetData>");
    }
}
