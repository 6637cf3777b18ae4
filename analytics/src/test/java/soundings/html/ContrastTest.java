package soundings.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Contrast of the page's colours, worked out from the style sheet: text in charts is what a checker in a browser leaves
 * undecided.
 */
class ContrastTest {
    /** WCAG 2.2, success criterion 1.4.3, level AA. */
    private static final double TEXT = 4.5;
    /** WCAG 2.2, success criterion 1.4.11: parts of graphics needed to understand them. */
    private static final double GRAPHICS = 3;

    private static final List<String> WRITTEN_IN = List.of("ink", "soft", "link", "act", "calm", "watch", "unsure");
    private static final List<String> DRAWN_IN = List.of("ink", "blue", "orange", "red", "purple", "soft");

    /** WCAG 2.2, "contrast ratio": from 1 to 21, so black on white gives 21; the others from the same formula by hand. */
    @ParameterizedTest
    @CsvSource({"#000000,#ffffff,21", "#ffffff,#ffffff,1", "#767676,#ffffff,4.542", "#808080,#000000,5.317"})
    void the_contrast_is_that_of_the_guidelines(String one, String other, double expected) {
        assertThat(contrast(Colour.of(one), Colour.of(other))).isCloseTo(expected, within(0.001));
    }

    static Stream<Arguments> schemes() throws IOException {
        return Stream.of("light", "dark", "print").map(s -> Arguments.of(s, tokens(s)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("schemes")
    void words_can_be_read_on_every_ground(String scheme, Map<String, String> tokens) {
        for (String ground : List.of("paper", "lift")) {
            for (String text : WRITTEN_IN) {
                assertThat(contrast(colour(tokens, text), colour(tokens, ground)))
                        .as(text + " on " + ground + ", " + scheme)
                        .isGreaterThanOrEqualTo(TEXT);
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("schemes")
    void a_charts_words_can_be_read_over_its_range_and_its_bands(String scheme, Map<String, String> tokens) {
        Colour paper = colour(tokens, "paper");
        Colour range = colour(tokens, "green").over(paper, Double.parseDouble(tokens.get("shade")));
        for (Colour ground : List.of(
                paper,
                range,
                colour(tokens, "sky").over(paper, opacity(".band")),
                colour(tokens, "purple").over(paper, opacity(".band.ahead")))) {
            assertThat(contrast(colour(tokens, "soft"), ground))
                    .as("a chart's words on " + ground + ", " + scheme)
                    .isGreaterThanOrEqualTo(GRAPHICS);
        }
        assertThat(contrast(colour(tokens, "soft"), paper)).isGreaterThanOrEqualTo(TEXT);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("schemes")
    void lines_and_signs_stand_out(String scheme, Map<String, String> tokens) {
        Colour paper = colour(tokens, "paper");
        Colour range = colour(tokens, "green").over(paper, Double.parseDouble(tokens.get("shade")));
        for (String line : DRAWN_IN) {
            for (Colour ground : List.of(paper, range)) {
                assertThat(contrast(colour(tokens, line), ground))
                        .as(line + " on " + ground + ", " + scheme)
                        .isGreaterThanOrEqualTo(GRAPHICS);
            }
        }
    }

    @Test
    void no_colour_is_written_past_the_names() throws IOException {
        String rules = style().replaceAll(":root \\{[^}]*}", "");

        assertThat(Pattern.compile("#[0-9a-fA-F]{3,8}\\b").matcher(rules).results())
                .isEmpty();
    }

    private static String style() throws IOException {
        return Files.readString(Path.of("..", "report-templates", "style.css"));
    }

    private static double opacity(String rule) {
        try {
            Matcher m = Pattern.compile(Pattern.quote(rule + " {") + "[^}]*fill-opacity: ([.0-9]+)")
                    .matcher(style());
            assertThat(m.find()).as(rule).isTrue();
            return Double.parseDouble(m.group(1));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** The named colours of a scheme; dark and print change some of light's. */
    private static Map<String, String> tokens(String scheme) {
        try {
            List<String> roots = Pattern.compile(":root \\{([^}]*)}")
                    .matcher(style())
                    .results()
                    .map(m -> m.group(1))
                    .toList();
            assertThat(roots).hasSize(3);
            Map<String, String> tokens = new LinkedHashMap<>();
            put(roots.get(0), tokens);
            put(scheme.equals("dark") ? roots.get(1) : scheme.equals("print") ? roots.get(2) : "", tokens);
            return tokens;
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static void put(String root, Map<String, String> tokens) {
        Pattern.compile("--([a-z]+): ([^;]+);")
                .matcher(root)
                .results()
                .forEach(m -> tokens.put(m.group(1), m.group(2)));
    }

    private static Colour colour(Map<String, String> tokens, String name) {
        return Colour.of(tokens.get(name));
    }

    private static double contrast(Colour one, Colour other) {
        double lighter = Math.max(one.luminance(), other.luminance());
        double darker = Math.min(one.luminance(), other.luminance());
        return (lighter + 0.05) / (darker + 0.05);
    }

    /** Parts from 0 to 1. */
    private record Colour(double red, double green, double blue) {
        static Colour of(String hex) {
            String six = hex.length() == 4 ? hex.substring(1).replaceAll("(.)", "$1$1") : hex.substring(1);
            return new Colour(part(six, 0), part(six, 2), part(six, 4));
        }

        private static double part(String six, int at) {
            return Integer.parseInt(six.substring(at, at + 2), 16) / 255.0;
        }

        Colour over(Colour ground, double opacity) {
            return new Colour(
                    mixed(red, ground.red, opacity),
                    mixed(green, ground.green, opacity),
                    mixed(blue, ground.blue, opacity));
        }

        private static double mixed(double top, double under, double opacity) {
            return top * opacity + under * (1 - opacity);
        }

        /** WCAG 2.2, "relative luminance" (as corrected in 2021: 0.04045). */
        double luminance() {
            return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
        }

        private static double linear(double part) {
            return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
        }
    }
}
