package soundings.template;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** The notebooks that ship with the program; each begins with a comment that says what it answers. */
public final class Shipped {
    public static final List<String> NAMES = List.of("monthly", "mentor", "traces", "new-tank", "course");

    private Shipped() {}

    /** @throws TemplateProblem naming the notebooks there are */
    public static Source named(String name) {
        return find(name)
                .orElseThrow(() -> new TemplateProblem("there is no notebook '" + name + "'; there are "
                        + String.join(", ", NAMES) + ", or name a file"));
    }

    public static Optional<Source> find(String name) {
        return NAMES.contains(name) ? Optional.of(new Source(name + ".md", text(name), true)) : Optional.empty();
    }

    /** A keeper's file; a copy of a shipped notebook that nobody changed counts as shipped. */
    public static Source file(String name, String text) {
        return new Source(name, text, NAMES.stream().anyMatch(n -> text(n).equals(text)));
    }

    /** What the notebook answers, from the comment on its first line. */
    public static String answers(String name) {
        String first = text(name).lines().findFirst().orElse("");
        return first.replaceAll("^<#--\\s*[a-z-]+:\\s*|\\s*-->$", "");
    }

    private static String text(String name) {
        try (InputStream in = Shipped.class.getResourceAsStream("/soundings/templates/" + name + ".md")) {
            if (in == null) {
                throw new IllegalStateException("the program was built without the notebook " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
