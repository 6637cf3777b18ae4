package soundings.cli;

import java.nio.file.Path;
import java.util.Objects;

/** Where a file stands. */
final class Folders {
    private Folders() {}

    /** The folder of a file named in any way; only a file system's root has none, and no log is one. */
    static Path of(Path file) {
        return Objects.requireNonNullElse(file.toAbsolutePath().getParent(), file.toAbsolutePath());
    }
}
