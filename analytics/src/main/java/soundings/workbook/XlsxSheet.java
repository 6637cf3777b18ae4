package soundings.workbook;

import java.util.BitSet;
import java.util.Optional;
import java.util.OptionalDouble;
import soundings.sheet.CellRef;
import soundings.sheet.Value;

/** One worksheet part, read from front to back: keeps the cells that hold something, and the merged areas. */
final class XlsxSheet {
    private static final String NO_VALUE = "no value";

    private final XlsxContext book;
    private final SheetCells cells;
    private final BitSet hiddenColumns = new BitSet();
    private boolean rowHidden;
    private long row = -1;
    private long column = -1;

    /** The attributes of the cell being read. */
    private String type = "";

    private Style style = Style.PLAIN;

    private XlsxSheet(XlsxContext book, SheetCells cells) {
        this.book = book;
        this.cells = cells;
    }

    static void read(Xml xml, XlsxContext book, SheetCells into) {
        XlsxSheet sheet = new XlsxSheet(book, into);
        while (xml.nextStart()) {
            sheet.element(xml);
        }
    }

    private void element(Xml xml) {
        switch (xml.name()) {
            case "c" -> readCell(xml);
            case "row" -> startRow(xml);
            case "col" -> readColumns(xml);
            case "mergeCell" -> xml.attribute("ref").flatMap(A1::findRegion).ifPresent(cells::merge);
            default -> {}
        }
    }

    private void startRow(Xml xml) {
        row = xml.attribute("r").map(A1::row).filter(r -> r > 0).orElse(row + 2) - 1;
        Limits.place(row, 0);
        column = -1;
        rowHidden = xml.flag("hidden");
    }

    private void readColumns(Xml xml) {
        int first = xml.number("min", 1);
        int last = Math.min(xml.number("max", first), Limits.COLUMNS);
        if (xml.flag("hidden") && first >= 1 && last >= first) {
            hiddenColumns.set(first - 1, last);
        }
    }

    private void readCell(Xml xml) {
        column++;
        type = "n";
        style = Style.PLAIN;
        for (int i = 0; i < xml.attributes(); i++) {
            String value = xml.attributeValue(i);
            switch (xml.attributeName(i)) {
                case "r" -> moveTo(value);
                case "t" -> type = value;
                case "s" -> style = book.styles().style(index(value));
                default -> {}
            }
        }
        readContent(xml);
    }

    private void moveTo(String address) {
        long writtenColumn = A1.column(address);
        long writtenRow = A1.row(address);
        column = writtenColumn > 0 ? writtenColumn - 1 : column;
        row = writtenRow > 0 ? writtenRow - 1 : row;
    }

    private static int index(String written) {
        return (int) Numbers.find(written).orElse(-1);
    }

    private void readContent(Xml xml) {
        int outer = xml.depth();
        boolean formula = false;
        Optional<String> stored = Optional.empty();
        while (xml.nextStartWithin(outer)) {
            switch (xml.name()) {
                case "v" -> stored = Optional.of(xml.text());
                case "f" -> {
                    formula = true;
                    xml.skip();
                }
                case "is" -> keep(SharedStrings.Entry.of(RichText.read(xml)), formula);
                default -> xml.skip();
            }
        }
        if (stored.isPresent() || formula) {
            keep(stored.orElse(""), formula);
        }
    }

    private void keep(String stored, boolean formula) {
        if (stored.isBlank() && !type.equals("str") && !type.equals("inlineStr")) {
            keepNothing(formula);
            return;
        }
        switch (type) {
            case "s" -> keep(book.strings().entry(index(stored)), formula);
            case "str", "inlineStr" ->
                keep(
                        SharedStrings.Entry.of(
                                new RichText(RichText.unescaped(Limits.text(stored)), RichText.Struck.NOTHING)),
                        formula);
            case "b" -> keep(new Value.Flag(Xml.truth(stored.trim())), formula, false);
            case "e" -> keep(new Value.Fault(Limits.text(stored.trim())), formula, false);
            case "d" -> keep(isoDate(stored), formula, false);
            default -> keepNumber(stored, formula);
        }
    }

    private void keepNumber(String stored, boolean formula) {
        OptionalDouble number = Numbers.find(stored);
        if (number.isPresent()) {
            keep(style.value(number.getAsDouble(), book.from1904()), formula, false);
        } else {
            keep(new Value.Text(Limits.text(stored)), formula, false);
        }
    }

    /** A formula whose value was never saved is no empty cell; a bare style is. */
    private void keepNothing(boolean formula) {
        if (formula) {
            keep(new Value.Fault(NO_VALUE), true, false);
        }
    }

    private Value isoDate(String stored) {
        return IsoMoments.find(stored.trim(), book.from1904(), style.shows())
                .orElse(new Value.Text(Limits.text(stored)));
    }

    private void keep(SharedStrings.Entry entry, boolean formula) {
        if (!entry.empty()) {
            keep(entry.value(), formula, entry.struck() == RichText.Struck.ALL);
            if (entry.struck() == RichText.Struck.PART) {
                cells.partlyStruck(Limits.place(row, column));
            }
        }
    }

    private void keep(Value value, boolean formula, boolean struck) {
        CellRef at = Limits.place(row, column);
        boolean hidden = rowHidden || hiddenColumns.get(at.column());
        cells.add(at, value, style.look(hidden, formula, struck));
    }
}
