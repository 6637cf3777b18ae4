package soundings.workbook;

import java.util.Optional;
import java.util.OptionalDouble;
import soundings.sheet.Value;

/** One table cell of an OpenDocument spreadsheet: its attributes, its paragraphs, its note. */
final class OdsCell {
    private String type = "";
    private String stored = "";
    private String styleName = "";
    private int times = 1;
    private boolean formula;
    private boolean error;
    private RichText shown = new RichText("", RichText.Struck.NOTHING);
    private String note = "";
    private int drawings;

    private OdsCell() {}

    /** Takes the attributes of the cell just started. */
    static OdsCell started(Xml xml) {
        OdsCell cell = new OdsCell();
        for (int i = 0; i < xml.attributes(); i++) {
            cell.attribute(xml.attributeName(i), xml.attributeValue(i), xml.attributeSpace(i));
        }
        cell.times = Math.max(1, xml.number("number-columns-repeated", 1));
        return cell;
    }

    private void attribute(String name, String value, String space) {
        switch (name) {
            case "value-type" -> {
                boolean extension = space.contains("calcext");
                error |= extension && value.equals("error");
                type = extension ? type : value;
            }
            case "value", "date-value", "time-value", "boolean-value", "string-value" -> stored = value;
            case "style-name" -> styleName = value;
            case "formula" -> formula = true;
            default -> {}
        }
    }

    /** Reads to the end of the cell. */
    void content(Xml xml, OdsStyles styles) {
        OdsText text = new OdsText(styles);
        int outer = xml.depth();
        while (xml.nextStartWithin(outer)) {
            switch (xml.name()) {
                case "p", "h" -> text.paragraph(xml);
                case "annotation" -> note = note(xml, styles);
                case "frame", "custom-shape", "g" -> {
                    drawings++;
                    xml.skip();
                }
                default -> xml.skip();
            }
        }
        shown = text.joined();
    }

    private static String note(Xml xml, OdsStyles styles) {
        OdsText text = new OdsText(styles);
        int outer = xml.depth();
        while (xml.nextStartWithin(outer)) {
            if (xml.is("p")) {
                text.paragraph(xml);
            } else if (!xml.is("list") && !xml.is("list-item")) {
                xml.skip();
            }
        }
        return text.joined().text();
    }

    /** @param from1904 whether the document counts its days from 1904, so that day numbers and dates agree */
    Optional<Value> value(Style style, boolean from1904) {
        if (error) {
            return Optional.of(new Value.Fault(shown.text().isEmpty() ? "no value" : shown.text()));
        }
        return switch (type) {
            case "float", "currency", "percentage" -> number();
            case "date" -> IsoMoments.find(stored, from1904, style.shows()).or(this::text);
            case "time" -> IsoMoments.findSpan(stored).or(this::text);
            case "boolean" -> Optional.of(new Value.Flag(stored.equals("true")));
            case "string" -> stored.isEmpty() ? text() : Optional.of(new Value.Text(Limits.text(stored)));
            default -> formula && shown.text().isEmpty() ? Optional.of(new Value.Fault("no value")) : text();
        };
    }

    private Optional<Value> number() {
        OptionalDouble number = Numbers.find(stored);
        return number.isPresent() ? Optional.of(new Value.Numeric(number.getAsDouble())) : text();
    }

    private Optional<Value> text() {
        return shown.text().isEmpty() ? Optional.empty() : Optional.of(new Value.Text(shown.text()));
    }

    String styleOr(String otherwise) {
        return styleName.isEmpty() ? otherwise : styleName;
    }

    int times() {
        return times;
    }

    boolean formula() {
        return formula;
    }

    RichText.Struck struck() {
        return shown.struck();
    }

    String note() {
        return note;
    }

    int drawings() {
        return drawings;
    }
}
