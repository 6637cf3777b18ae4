package soundings.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import soundings.findings.Provenance;
import soundings.sheet.Book;
import soundings.workbook.WorkbookReader;

/** A log with its companion, both read; the files themselves are only ever read. */
record Opened(Path log, Book book, Optional<Path> setupFile, Optional<Book> setup) {
    /** @param setupAsked the setup workbook named on the command line; empty: the one beside the log, if there is one */
    static Opened of(Path log, Optional<Path> setupAsked, Optional<String> password) {
        Book book = WorkbookReader.read(log, password);
        Optional<Path> setupFile = setupAsked.isPresent() ? setupAsked : beside(log);
        return new Opened(log, book, setupFile, setupFile.map(f -> WorkbookReader.read(f, Optional.empty())));
    }

    /** What to say where a password was given for a file that has none: only a compound file may be locked. */
    static Optional<String> needless(Path log, Optional<String> password) {
        if (password.isEmpty()) {
            return Optional.empty();
        }
        try {
            return WorkbookReader.mayBeLocked(log)
                    ? Optional.empty()
                    : Optional.of(log.getFileName() + " has no password; the one given was not needed");
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    private static Optional<Path> beside(Path log) {
        Path setup = setupOf(log);
        return Files.isRegularFile(setup) ? Optional.of(setup) : Optional.empty();
    }

    /** Where the setup workbook of a log stands, whether or not there is one. */
    static Path setupOf(Path log) {
        return log.resolveSibling(stem(log) + "-setup.xlsx");
    }

    /** The file's name without its last ending. */
    static String stem(Path file) {
        String name = String.valueOf(file.getFileName());
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }

    /** What a report of this log rests on, with the options it was asked for. */
    Provenance provenance(String options) {
        return new Provenance(
                String.valueOf(log.getFileName()),
                sha256(log),
                setupFile.map(f -> String.valueOf(f.getFileName())).orElse(""),
                options,
                Version.number());
    }

    /** SHA-256 of a file's bytes in hex. */
    static String sha256(Path file) {
        try (InputStream bytes =
                new DigestInputStream(Files.newInputStream(file), MessageDigest.getInstance("SHA-256"))) {
            bytes.transferTo(java.io.OutputStream.nullOutputStream());
            return HexFormat.of()
                    .formatHex(((DigestInputStream) bytes).getMessageDigest().digest());
        } catch (IOException e) {
            throw new CannotDo(file.getFileName() + ": could not be read to its end", e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
