package soundings.wording;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** A text cut into what a date is made of: figures, a month's name, a weekday, a time, and the signs between figures. */
final class DatePieces {
    private static final Set<String> SUFFIXES = Set.of("st", "nd", "rd", "th", "er", "e", "de", "ste", "º", "ª");
    private static final Set<String> FILLERS = Set.of(
            "the",
            "of",
            "on",
            "de",
            "den",
            "der",
            "le",
            "el",
            "la",
            "del",
            "am",
            "um",
            "at",
            "a",
            "o",
            "clock",
            "om",
            "and",
            "morning",
            "evening",
            "afternoon",
            "noon",
            "night",
            "midday",
            "early",
            "late",
            "lunch",
            "lunchtime",
            "morgens",
            "abends",
            "mittags",
            "date",
            "dated",
            "week",
            "wk");

    record Figures(String text, char before) {
        int value() {
            return Integer.parseInt(text);
        }
    }

    final List<Figures> figures = new ArrayList<>();
    OptionalInt month = OptionalInt.empty();
    int figuresBeforeMonth = 0;
    Optional<DayOfWeek> weekday = Optional.empty();
    Optional<LocalTime> time = Optional.empty();
    boolean trailingDot;
    /** Another word than those of dates stands in the text. */
    boolean foreign;

    /** {@code mar.} in front: March, or with another month behind it {@code mardi}, {@code martes}. */
    private boolean tuesday;

    private final String plain;
    private int at = 0;
    private char sign = ' ';

    DatePieces(String plain) {
        this.plain = plain;
        while (at < plain.length() && !foreign) {
            char c = plain.charAt(at);
            if (Tokens.digit(c)) {
                figures();
            } else if (Tokens.letter(c) || c == 'º' || c == 'ª') {
                word();
            } else {
                sign(c);
            }
        }
        trailingDot = plain.endsWith(".");
    }

    private void sign(char c) {
        foreign |= "/.-, '()\t_:\n".indexOf(c) < 0;
        sign = c == ' ' && sign != ' ' ? sign : c;
        at++;
    }

    private void figures() {
        Optional<LocalTime> clock = time.isPresent() ? Optional.empty() : clock();
        if (clock.isPresent()) {
            time = clock;
            return;
        }
        int end = digitsEnd(at);
        foreign |= end - at > 8;
        figures.add(new Figures(plain.substring(at, end), sign));
        at = end;
        sign = ' ';
    }

    private int digitsEnd(int from) {
        int end = from;
        while (end < plain.length() && Tokens.digit(plain.charAt(end))) {
            end++;
        }
        return end;
    }

    /** {@code 18:30}, {@code 6:05:00 pm}, {@code 6 pm}, {@code 18h30}, {@code 18 Uhr}; moves on behind it. */
    private Optional<LocalTime> clock() {
        int end = digitsEnd(at);
        if (end - at > 2) {
            return Optional.empty();
        }
        int hour = Integer.parseInt(plain.substring(at, end));
        int minute = 0;
        boolean timed = false;
        if (end < plain.length()
                && (plain.charAt(end) == ':' || plain.charAt(end) == 'h' || dottedClock(end))
                && digitsEnd(end + 1) == end + 3) {
            minute = Integer.parseInt(plain.substring(end + 1, end + 3));
            end = seconds(end + 3);
            timed = true;
        }
        return clock(hour, minute, end, timed);
    }

    /** A point counts as the sign of a time only before {@code pm}, {@code Uhr}. */
    private boolean dottedClock(int end) {
        int behind = digitsEnd(end + 1);
        String half = wordAt(skipSpaces(behind));
        return plain.charAt(end) == '.' && behind == end + 3 && (half.equals("pm") || half.equals("uhr"));
    }

    private int seconds(int end) {
        boolean more = end < plain.length() && plain.charAt(end) == ':' && digitsEnd(end + 1) == end + 3;
        return more ? end + 3 : end;
    }

    private Optional<LocalTime> clock(int hour, int minute, int end, boolean timed) {
        int wordFrom = skipSpaces(end);
        String word = wordAt(wordFrom);
        String dotted = word.length() == 1 && plain.startsWith(".m.", wordFrom + 1) ? word + "m" : word;
        boolean half = dotted.equals("am") || dotted.equals("pm");
        boolean uhr = word.equals("uhr") || word.equals("h") || word.equals("hrs") || word.equals("heures");
        if (!timed && !half && !uhr || hour > 23 || minute > 59 || half && (hour > 12 || hour == 0)) {
            return Optional.empty();
        }
        int hours = half ? hour % 12 + (dotted.equals("pm") ? 12 : 0) : hour;
        at = half ? wordFrom + (dotted.equals(word) ? 2 : 4) : uhr ? wordFrom + word.length() : end;
        return Optional.of(LocalTime.of(hours, minute));
    }

    private int skipSpaces(int from) {
        int i = from;
        while (i < plain.length() && plain.charAt(i) == ' ') {
            i++;
        }
        return i;
    }

    private String wordAt(int from) {
        int end = from;
        while (end < plain.length() && Tokens.letter(plain.charAt(end))) {
            end++;
        }
        return plain.substring(Math.min(from, plain.length()), end);
    }

    private void word() {
        boolean behindFigures = at > 0 && Tokens.digit(plain.charAt(at - 1));
        String word = wordAt(at);
        int length = Math.max(1, word.length());
        OptionalInt named = MonthNames.month(word);
        if (named.isPresent() && (month.isEmpty() || tuesday)) {
            weekday = tuesday ? Optional.of(DayOfWeek.TUESDAY) : weekday;
            tuesday = !tuesday && word.equals("mar") && figures.isEmpty() && weekday.isEmpty();
            month = named;
            figuresBeforeMonth = figures.size();
        } else if (weekday.isEmpty() && MonthNames.weekday(word).isPresent()) {
            weekday = MonthNames.weekday(word);
        } else {
            boolean suffix = behindFigures && (SUFFIXES.contains(word) || word.isEmpty());
            boolean isoTime = behindFigures && (word.equals("t") || word.equals("z"));
            foreign |= !suffix && !isoTime && (behindFigures || !FILLERS.contains(word));
        }
        at += length;
        sign = ' ';
    }
}
