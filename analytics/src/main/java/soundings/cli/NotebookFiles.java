package soundings.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import soundings.template.Shipped;
import soundings.template.Source;

/** Finds a notebook by its name or as a file of the keeper's own. */
final class NotebookFiles {
    private NotebookFiles() {}

    /** What tells the reports of a notebook from those of the usual one, whose files have no mark. */
    static String mark(String nameOrFile) {
        boolean usual = nameOrFile.equals(Shipped.NAMES.get(0));
        return usual ? "" : " " + Opened.stem(Path.of(nameOrFile));
    }

    static Source named(String nameOrFile) {
        Optional<Source> shipped = Shipped.find(nameOrFile);
        return shipped.isPresent() ? shipped.get() : file(nameOrFile);
    }

    private static Source file(String nameOrFile) {
        Path file = Path.of(nameOrFile);
        if (!Files.isRegularFile(file)) {
            throw new CannotDo("there is no notebook '" + nameOrFile + "' and no such file; the notebooks are "
                    + String.join(", ", Shipped.NAMES));
        }
        try {
            return Shipped.file(String.valueOf(file.getFileName()), Files.readString(file));
        } catch (IOException e) {
            throw new CannotDo("cannot read the notebook " + file + " as UTF-8 text", e);
        }
    }
}
