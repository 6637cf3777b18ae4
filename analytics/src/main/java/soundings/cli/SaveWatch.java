package soundings.cli;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Predicate;

/**
 * Turns the burst of events that one save makes (writes, a rename over the old file, lock files) into one call, once the
 * file has kept its size and time for {@value #STILL_MILLIS} ms.
 */
final class SaveWatch {
    private static final long STILL_MILLIS = 300;

    private final Path folder;
    private final Predicate<Path> wanted;
    private final Map<Path, Stamp> moving = new HashMap<>();
    private final Map<Path, Stamp> reported = new HashMap<>();

    SaveWatch(Path folder, Predicate<Path> wanted) {
        this.folder = folder;
        this.wanted = wanted;
    }

    private record Stamp(long size, long modified, long seen) {
        boolean sameFile(Stamp other) {
            return size == other.size && modified == other.modified;
        }
    }

    void forever(Consumer<Path> saved) throws IOException, InterruptedException {
        try (WatchService service = FileSystems.getDefault().newWatchService()) {
            folder.register(service, StandardWatchEventKinds.ENTRY_CREATE, StandardWatchEventKinds.ENTRY_MODIFY);
            while (true) {
                WatchKey key = moving.isEmpty() ? service.take() : service.poll(100, TimeUnit.MILLISECONDS);
                if (key != null) {
                    key.pollEvents().forEach(this::noted);
                    if (!key.reset()) {
                        throw new CannotDo(folder + " can no longer be watched; it was moved or removed");
                    }
                }
                settled(saved);
            }
        }
    }

    private void noted(WatchEvent<?> event) {
        if (event.context() instanceof Path name && wanted.test(name)) {
            Path file = folder.resolve(name);
            moving.put(file, stamp(file));
        }
    }

    private void settled(Consumer<Path> saved) {
        for (Path file : java.util.List.copyOf(moving.keySet())) {
            Stamp before = moving.getOrDefault(file, stamp(file));
            Stamp now = stamp(file);
            if (!now.sameFile(before)) {
                moving.put(file, now);
            } else if (now.seen() - before.seen() >= STILL_MILLIS) {
                moving.remove(file);
                done(file, now, saved);
            }
        }
    }

    private void done(Path file, Stamp now, Consumer<Path> saved) {
        Stamp last = reported.put(file, now);
        if (now.size() > 0 && (last == null || !last.sameFile(now))) {
            saved.accept(file);
        }
    }

    private static Stamp stamp(Path file) {
        try {
            return new Stamp(
                    Files.size(file), Files.getLastModifiedTime(file).toMillis(), System.nanoTime() / 1_000_000);
        } catch (IOException gone) {
            return new Stamp(0, 0, System.nanoTime() / 1_000_000);
        }
    }
}
