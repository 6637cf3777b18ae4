package soundings.cli;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;

/** Watches a folder and gives each log once for each save of it or of its setup. */
final class SaveWatch {
    private static final long LOOK_MILLIS = 50;

    private final Path folder;
    private final Function<Path, Optional<Path>> logOf;
    private final Settling<Path> settling = new Settling<>(SaveWatch::stamp);

    /** @param logOf the log that a saved file belongs to; empty where it is none of ours */
    SaveWatch(Path folder, Function<Path, Optional<Path>> logOf) {
        this.folder = folder;
        this.logOf = logOf;
    }

    /** What is done with a saved log. */
    interface Saved {
        /**
         * @param last whether to say why, where it cannot be read
         * @return false where it could not be read and is to be tried again
         */
        boolean report(Path log, boolean last);
    }

    /** @param first done at once; what is saved meanwhile is not missed */
    void forever(Runnable first, Saved saved) throws IOException, InterruptedException {
        try (WatchService service = FileSystems.getDefault().newWatchService()) {
            folder.register(service, StandardWatchEventKinds.ENTRY_CREATE, StandardWatchEventKinds.ENTRY_MODIFY);
            first.run();
            while (true) {
                WatchKey key = settling.isIdle() ? service.take() : service.poll(LOOK_MILLIS, TimeUnit.MILLISECONDS);
                if (key != null) {
                    key.pollEvents().forEach(this::noted);
                    if (!key.reset()) {
                        throw new CannotDo(folder + " can no longer be watched; it was moved or removed");
                    }
                }
                settling.due(now()).forEach(due -> tell(due, saved));
            }
        }
    }

    private void noted(WatchEvent<?> event) {
        if (event.context() instanceof Path name) {
            logOf.apply(folder.resolve(name)).ifPresent(log -> settling.touched(log, now()));
        }
    }

    private void tell(Settling.Due<Path> due, Saved saved) {
        if (saved.report(due.log(), due.last())) {
            settling.read(due.log());
        } else {
            settling.unreadable(due.log(), now());
        }
    }

    private static long now() {
        return System.nanoTime() / 1_000_000;
    }

    /** Of the log and the setup beside it, if there is one. */
    private static Settling.Stamp stamp(Path log) {
        Settling.Stamp one = ofFile(log);
        Settling.Stamp two = ofFile(Opened.setupOf(log));
        return one.size() == 0
                ? one
                : new Settling.Stamp(one.size() + two.size(), one.modified() * 31 + two.modified());
    }

    private static Settling.Stamp ofFile(Path file) {
        try {
            return new Settling.Stamp(
                    Files.size(file), Files.getLastModifiedTime(file).toMillis());
        } catch (IOException gone) {
            return new Settling.Stamp(0, 0);
        }
    }
}
