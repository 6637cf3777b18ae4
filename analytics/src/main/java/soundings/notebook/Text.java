package soundings.notebook;

import java.time.LocalDate;
import java.util.regex.Pattern;

/** Sentences joined from parts that may or may not end in a full stop. */
final class Text {
    private static final Pattern DAY = Pattern.compile(
            "\\b20[0-9]{2}-(0[1-9]|1[0-2])-(0[1-9]|1[0-9]|2[0-8])\\b|\\b20[0-9]{2}-(0[13-9]|1[0-2])-(29|30)\\b|\\b20[0-9]{2}-(0[13578]|1[02])-31\\b");

    private Text() {}

    /** With a capital and a full stop; nothing stays nothing. */
    static String sentence(String words) {
        String plain = spoken(words.strip());
        if (plain.isEmpty()) {
            return "";
        }
        boolean closed = ".!?".indexOf(plain.charAt(plain.length() - 1)) >= 0;
        return Figures.capital(plain) + (closed ? "" : ".");
    }

    /** Without its full stop, to stand inside another sentence. */
    static String clause(String words) {
        String plain = spoken(words.strip());
        return plain.endsWith(".") ? plain.substring(0, plain.length() - 1) : plain;
    }

    /** Days as people say them, and a true minus sign before a figure. */
    private static String spoken(String words) {
        String days = DAY.matcher(words).replaceAll(day -> Figures.day(LocalDate.parse(day.group())));
        return days.replaceAll("(?<=[ (])-(?=[0-9])", "−");
    }
}
