package soundings.workbook;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soundings.sheet.Value;

/** The text table of an OOXML workbook: each text once, its value shared by all its cells. */
final class SharedStrings {
    /** One text; a cell that names a text the table does not have is a fault. */
    record Entry(Value value, boolean empty, RichText.Struck struck) {
        static Entry of(RichText text) {
            return new Entry(new Value.Text(text.text()), text.text().isEmpty(), text.struck());
        }
    }

    private static final Entry LOST = new Entry(new Value.Fault("no value"), false, RichText.Struck.NOTHING);

    private final List<Entry> entries = new ArrayList<>();

    static SharedStrings of(Optional<InputStream> part) {
        SharedStrings strings = new SharedStrings();
        part.ifPresent(stream -> {
            try (Xml xml = Xml.of(stream)) {
                while (xml.nextStart()) {
                    if (xml.is("si")) {
                        strings.add(Entry.of(RichText.read(xml)));
                    }
                }
            }
        });
        return strings;
    }

    private void add(Entry entry) {
        entries.add(entry);
        Limits.cells(entries.size());
    }

    Entry entry(int index) {
        return index >= 0 && index < entries.size() ? entries.get(index) : LOST;
    }
}
