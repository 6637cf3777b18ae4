package soundings.template;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * A run in a process of its own: a template can loop without printing, or double a text until memory is gone, and
 * nothing inside one process stops that for certain. Costs about a third of a second.
 */
final class ChildRun {
    static final Duration LONGEST = Duration.ofSeconds(10);

    private ChildRun() {}

    static Printed of(Source source, Map<String, ?> model, List<Signature> items) {
        return within(LONGEST, source, model, items);
    }

    static Printed within(Duration limit, Source source, Map<String, ?> model, List<Signature> items) {
        Process child = started(source);
        try {
            CompletableFuture<Printed> answer =
                    CompletableFuture.supplyAsync(() -> conversation(child, source, model, items));
            return answer.get(limit.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            throw TemplateProblem.at(
                    source.name(), 0, "stopped after " + limit.toSeconds() + " s; does a loop not end?");
        } catch (ExecutionException e) {
            throw e.getCause() instanceof TemplateProblem problem ? problem : new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw TemplateProblem.at(source.name(), 0, "interrupted");
        } finally {
            child.destroyForcibly();
        }
    }

    private static Process started(Source source) {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        List<String> command = new ArrayList<>(List.of(java, "-Xmx96m", "-Xss1m", "-XX:+UseSerialGC"));
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-Xshare:auto", "-cp", classPath(), Child.class.getName()));
        try {
            return new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            throw TemplateProblem.at(source.name(), 0, "cannot be run in a process of its own: " + e.getMessage());
        }
    }

    private static String classPath() {
        Set<String> places = new LinkedHashSet<>();
        for (Class<?> needed : List.of(Child.class, freemarker.template.Template.class)) {
            try {
                places.add(Path.of(needed.getProtectionDomain()
                                .getCodeSource()
                                .getLocation()
                                .toURI())
                        .toString());
            } catch (URISyntaxException e) {
                throw new IllegalStateException(e);
            }
        }
        return String.join(System.getProperty("path.separator"), places);
    }

    private static Printed conversation(Process child, Source source, Map<String, ?> model, List<Signature> items) {
        try (DataOutputStream to = new DataOutputStream(new java.io.BufferedOutputStream(child.getOutputStream()));
                DataInputStream from = new DataInputStream(new BufferedInputStream(child.getInputStream()))) {
            Wire.writeRequest(to, new Wire.Request(source, model, items));
            to.flush();
            return Wire.readAnswer(from);
        } catch (IOException e) {
            throw TemplateProblem.at(
                    source.name(), 0, "its process ended without an answer; it may need too much memory");
        }
    }
}
