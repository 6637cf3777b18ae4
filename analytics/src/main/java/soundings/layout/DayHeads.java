package soundings.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import soundings.sheet.Cell;
import soundings.sheet.Value;
import soundings.wording.Dates;
import soundings.wording.DatesInText;

/** Lines that say which day, and perhaps which tank, the lines below them are of: {@code Date: 3 May}, {@code 3 May - Pier}. */
final class DayHeads {
    private static final Pattern LABELLED = Pattern.compile("(?s)\\s*([\\p{L}' ]{2,20}?)\\s*[:=]\\s*(.*)");
    private static final Pattern SIGNS = Pattern.compile("[\\s\\-–—:,;|/()]+");
    private static final Pattern TRAILING = Pattern.compile("[\\s\\-–—:,;|/(]+$");
    /** A word for the day, the day, a word for the tank, the tank, and one more. */
    private static final int MOST_CELLS = 5;

    private static final int LONGEST_NAME = 30;
    private static final int LEADING_WORDS = 3;
    private static final int SHORTEST_DATE = 6;
    private static final int LONGEST_DAY = 50;

    private final Words words;
    private final Tanks tanks;
    private final TankTitles titles;
    /** Whether all stands in one column, so that results may follow a day in its own cell. */
    private final boolean single;

    DayHeads(Words words, Tanks tanks, boolean single) {
        this.words = words;
        this.tanks = tanks;
        this.titles = new TankTitles(words);
        this.single = single;
    }

    /** @param rest what else stands in the line, where it is no tank's name */
    record Head(Cell date, Optional<Cell> tank, List<Cell> rest) {}

    /** The day a line says and nothing but, save for its tank. */
    Optional<Head> of(Line line) {
        if (line.cells().size() > MOST_CELLS) {
            return Optional.empty();
        }
        List<Cell> pieces = pieces(line);
        Optional<Cell> date = Optional.empty();
        Optional<Cell> tank = Optional.empty();
        List<Cell> rest = new ArrayList<>();
        Role before = Role.UNKNOWN;
        for (Cell piece : pieces) {
            Role label = piece.value() instanceof Value.Text ? label(piece.shown()) : Role.UNKNOWN;
            if (label != Role.UNKNOWN) {
                before = label;
                continue;
            }
            if (before == Role.TANK || date.isPresent() && tank.isEmpty() && named(piece)) {
                tank = Optional.of(piece);
            } else if (date.isEmpty() && dated(piece)) {
                date = Optional.of(piece);
            } else {
                rest.add(piece);
            }
            before = Role.UNKNOWN;
        }
        boolean more = rest.isEmpty() || single && !dateIn(rest) || rest.size() == 1 && named(line, rest.get(0));
        boolean head = date.isPresent() && more;
        Optional<Cell> whose = tank;
        return head ? date.map(d -> new Head(d, whose, List.copyOf(rest))) : Optional.empty();
    }

    /** The tank that a line names behind a word for it, or that is known, and nothing else. */
    Optional<Cell> tank(Line line) {
        List<Cell> pieces = pieces(line);
        boolean labelled = pieces.size() == 2 && label(pieces.get(0).shown()) == Role.TANK;
        boolean known =
                pieces.size() == 1 && tanks.findNamed(pieces.get(0).shown()).isPresent();
        return labelled || known ? Optional.of(pieces.get(pieces.size() - 1)) : Optional.empty();
    }

    /** A line of a few words that may be a name. */
    Optional<Cell> name(Line line) {
        Cell only = line.cells().get(0);
        return line.cells().size() == 1 && mayName(only) ? Optional.of(only) : Optional.empty();
    }

    /** Whether a name stands behind the day in its own cell. */
    private boolean named(Line line, Cell rest) {
        return line.cells().size() == 1 && mayName(rest);
    }

    boolean mayName(Cell cell) {
        return words.kind(cell) == Kind.WORDS
                && cell.shown().strip().length() <= LONGEST_NAME
                && titles.nameLike(cell.shown())
                && !titles.general(cell.shown());
    }

    private boolean named(Cell cell) {
        return tanks.findNamed(cell.shown()).isPresent();
    }

    /** Whether a cell is a day; {@code May 2026} is none. */
    boolean dated(Cell cell) {
        boolean month =
                words.monthNamed(cell).isPresent() && words.year(cell.shown()).isPresent();
        return !month && words.kind(cell) == Kind.DATE;
    }

    private boolean dateIn(List<Cell> rest) {
        return rest.stream()
                .anyMatch(c -> dated(c) || DatesInText.leading(c.shown()).isPresent());
    }

    /** Whether the days of a week, by name or date, head the columns below a line. */
    boolean week(Line line) {
        return Dates.weekday(line.cells().get(0).shown()).isPresent()
                        && line.cells().size() > 1
                || line.cells().stream()
                                .filter(c -> Dates.weekday(c.shown()).isPresent())
                                .count()
                        >= 2
                || line.cells().stream().filter(this::dated).count() >= 3;
    }

    private Role label(String text) {
        String bare = text.replaceFirst("\\s*[:=]\\s*$", "");
        Role role = words.label(bare).role();
        return role.dates() ? Role.DATE : titles.saysTank(bare) && titles.general(bare) ? Role.TANK : Role.UNKNOWN;
    }

    /** The line's cells, those taken apart that hold a label and its value, or a day and more. */
    private List<Cell> pieces(Line line) {
        return line.cells().stream().flatMap(c -> pieces(c).stream()).toList();
    }

    private List<Cell> pieces(Cell cell) {
        if (!(cell.value() instanceof Value.Text)) {
            return List.of(cell);
        }
        String text = cell.shown();
        Matcher labelled = LABELLED.matcher(text);
        if (labelled.matches() && label(labelled.group(1)) != Role.UNKNOWN) {
            List<Cell> both = new ArrayList<>(List.of(part(cell, labelled.group(1))));
            if (!labelled.group(2).isBlank()) {
                both.addAll(pieces(part(cell, labelled.group(2))));
            }
            return both;
        }
        Optional<Cell> led = led(cell, text);
        if (led.isPresent()) {
            return List.of(led.get());
        }
        return DatesInText.leading(text)
                .map(day -> parted(cell, text.substring(0, day.end()), text.substring(day.end())))
                .orElse(List.of(cell));
    }

    /** The day behind a few words that any log has: {@code Checked 7/3/2026}, {@code Week 3: Friday 20 March 2026}. */
    private Optional<Cell> led(Cell cell, String text) {
        if (text.length() > LONGEST_DAY
                || text.chars().noneMatch(Character::isDigit)
                || Character.isDigit(text.charAt(0))) {
            return Optional.empty();
        }
        String[] said = text.strip().split("\\s+");
        for (int n = 1; n <= LEADING_WORDS && n < said.length; n++) {
            String lead = String.join(" ", Arrays.asList(said).subList(0, n)).replaceFirst("[:,–-]+$", "");
            Cell rest = part(cell, String.join(" ", Arrays.asList(said).subList(n, said.length)));
            boolean general = !dated(part(cell, lead)) && titles.general(lead) && !Character.isDigit(lead.charAt(0));
            if (general && rest.shown().length() >= SHORTEST_DATE && dated(rest)) {
                return Optional.of(rest);
            }
        }
        return Optional.empty();
    }

    private List<Cell> parted(Cell cell, String day, String behind) {
        String rest = SIGNS.matcher(behind).lookingAt() ? behind.substring(signs(behind)) : behind;
        String bare = rest.endsWith(")") && behind.contains("(") ? rest.substring(0, rest.length() - 1) : rest;
        Cell date = part(cell, TRAILING.matcher(day).replaceFirst(""));
        return bare.isBlank() ? List.of(date) : List.of(date, part(cell, bare));
    }

    private static int signs(String behind) {
        Matcher signs = SIGNS.matcher(behind);
        return signs.lookingAt() ? signs.end() : 0;
    }

    private static Cell part(Cell cell, String text) {
        return new Cell(cell.at(), new Value.Text(text.strip()), cell.look(), cell.comment());
    }
}
