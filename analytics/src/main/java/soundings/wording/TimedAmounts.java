package soundings.wording;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** {@code 7.9 (8am) / 8.2 (8pm)}, {@code 8.0 am, 8.2 pm}: several amounts of a day in one cell, each with when it was read. */
public final class TimedAmounts {
    private static final Pattern BETWEEN = Pattern.compile(
            "\\s*[/;|&\\n]\\s*|,\\s+|\\s+(?:and|und|et|y|en)\\s+|(?<=\\))\\s+(?=[0-9<>~])|(?<=[ap]m)\\s+(?=[0-9<>~])");
    private static final String CLOCK =
            "(?<![0-9.,:])(?:[0-9]{1,2}(?::|h)[0-9]{2}(?:\\s*[ap]m)?|[0-9]{1,2}\\s*[ap]m\\b|[0-9]{1,2}\\s?h\\b)";
    private static final String PART =
            "\\b(?:am|pm|morning|midday|noon|afternoon|evening|night|morgens|mittags|abends|matin"
                    + "|midi|soir|manana|tarde|noche|ochtend|middag|avond)\\b";
    private static final Pattern WHEN =
            Pattern.compile("[(@]?\\s*(?:at|um|a)?\\s*(?:(?<clock>" + CLOCK + ")|(?<part>" + PART + "))\\s*[)]?");
    private static final int MOST = 6;

    private TimedAmounts() {}

    /** An amount and its time; empty where only the part of the day is told. */
    public record Timed(Optional<LocalTime> time, WrittenAmount amount) {}

    /** In the order of the text; empty unless it holds two or more, each told apart by its time, and nothing else. */
    public static List<Timed> in(String text, DecimalMark mark, Vocabulary vocabulary) {
        String[] pieces = BETWEEN.split(Plain.of(text).strip(), MOST + 1);
        Set<String> whens = new HashSet<>();
        List<Timed> all = new ArrayList<>();
        for (String piece : pieces) {
            Matcher when = WHEN.matcher(piece);
            if (!when.find() || !whens.add(when.group().replaceAll("[^\\p{L}\\p{N}:]", ""))) {
                return List.of();
            }
            String rest = (piece.substring(0, when.start()) + " " + piece.substring(when.end()))
                    .replaceAll("^[\\s:=-]+|[\\s:=]+$", "");
            timed(Optional.ofNullable(when.group("clock")), rest, mark, vocabulary)
                    .ifPresent(all::add);
        }
        return pieces.length >= 2 && pieces.length <= MOST && all.size() == pieces.length ? all : List.of();
    }

    private static Optional<Timed> timed(Optional<String> clock, String rest, DecimalMark mark, Vocabulary vocabulary) {
        Optional<LocalTime> time = clock.map(c -> c.replaceFirst("h$", ":00").replace('h', ':'))
                .flatMap(Dates::read)
                .flatMap(WrittenDate::time);
        if (clock.isPresent() && time.isEmpty()) {
            return Optional.empty();
        }
        return Amounts.read(rest, mark, vocabulary)
                .match(
                        w -> Optional.of(new Timed(time, w.amount())),
                        s -> Optional.empty(),
                        s -> Optional.empty(),
                        n -> Optional.empty(),
                        u -> Optional.empty());
    }
}
