package soundings.xlsx;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.apache.poi.ss.util.WorkbookUtil;

/** Names for sheets: short, of allowed signs, each once whatever its case. */
final class SheetNames {
    private static final int LONGEST = 31;

    private final Set<String> taken = new HashSet<>();

    String take(String wanted) {
        String words = CellText.holdable(wanted).strip();
        String safe = WorkbookUtil.createSafeSheetName(words.isEmpty() ? "Sheet" : words, ' ')
                .strip();
        String name = safe;
        for (int i = 2; !taken.add(name.toLowerCase(Locale.ROOT)); i++) {
            String tail = " " + i;
            name = safe.substring(0, Math.min(safe.length(), LONGEST - tail.length()))
                            .strip()
                    + tail;
        }
        return name;
    }
}
