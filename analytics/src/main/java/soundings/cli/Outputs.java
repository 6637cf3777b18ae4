package soundings.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Files written whole or not at all: to a temporary name beside their place, then moved in. */
final class Outputs {
    private final Console console;

    Outputs(Console console) {
        this.console = console;
    }

    /** What fills a file. */
    interface Content {
        void to(OutputStream out) throws IOException;
    }

    /**
     * Writes {@code target}; where that file is held open by another program, a second name beside it.
     *
     * @return the path written
     */
    Path write(Path target, Content content) {
        Path folder = Folders.of(target);
        Path part = null;
        try {
            Files.createDirectories(folder);
            part = Files.createTempFile(folder, ".soundings-", ".part");
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(part), 1 << 16)) {
                content.to(out);
            }
            readableAsUsual(part);
            return moved(part, target);
        } catch (IOException e) {
            throw new CannotDo("cannot write " + target + ": " + reason(e) + "; choose another folder with --out", e);
        } finally {
            drop(part);
        }
    }

    private Path moved(Path part, Path target) throws IOException {
        try {
            return move(part, target);
        } catch (FileSystemException held) {
            Path second = target.resolveSibling(secondName(String.valueOf(target.getFileName())));
            Path written = move(part, second);
            console.notice(target.getFileName() + " could not be replaced (is it open?); wrote " + second.getFileName()
                    + " instead");
            return written;
        }
    }

    private static Path move(Path part, Path target) throws IOException {
        if (Files.isDirectory(target)) {
            throw new FileSystemException(target.toString(), null, "a folder stands there");
        }
        try {
            return Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            return Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** {@code "a.html"} becomes {@code "a (2).html"}. */
    static String secondName(String name) {
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) + " (2)" + name.substring(dot) : name + " (2)";
    }

    /** A temporary file is its owner's only; a report is to be read by whom the folder lets. */
    private static void readableAsUsual(Path part) {
        part.toFile().setReadable(true, false);
    }

    private static String reason(IOException e) {
        if (e instanceof FileSystemException f && f.getReason() != null) {
            return f.getReason();
        }
        return e instanceof java.nio.file.AccessDeniedException ? "writing is not allowed there" : "" + e.getMessage();
    }

    private static void drop(@org.jspecify.annotations.Nullable Path part) {
        try {
            if (part != null) {
                Files.deleteIfExists(part);
            }
        } catch (IOException e) {
            // A leftover .part file harms nothing, and the first failure is the one to tell.
        }
    }
}
