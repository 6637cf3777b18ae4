package soundings.layout;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import soundings.chemistry.Names;
import soundings.sheet.Cell;
import soundings.wording.Dates;
import soundings.wording.VolumeText;

/** What titles and sheets' names say of a tank's name: {@code Tank: Lagoon, 300 L}, {@code Diary - Pier tank}. */
final class TankTitles {
    private static final int LONGEST = 40;
    private static final int MOST_WORDS = 6;
    private static final int FEW_WORDS = 4;
    private static final Pattern LABELLED = Pattern.compile("\\s*([\\p{L}' ]{2,20}?)\\s*[:=]\\s*(.*)");
    private static final Pattern INSIDE =
            Pattern.compile("(?:[.;,|]|\\s[-–—])\\s+(\\p{L}{2,20})\\s*[:=]\\s*([^.;,|(]{2,40})");
    private static final Pattern PIECES = Pattern.compile("\\s+[-–—]\\s+|\\s*[:,(|·/–—]\\s*");
    private static final Pattern YEAR = Pattern.compile("(19|20)[0-9]{2}");
    /** A number, counted through or of a part of the year: {@code 2nd}, {@code Q1}. */
    private static final Pattern COUNTED = Pattern.compile("[0-9]+(st|nd|rd|th|e|er|º|ª)?|[qht][1-4]");

    private static final Pattern WORDS = Pattern.compile("[^\\p{L}\\p{N}']+");

    private final Words words;

    TankTitles(Words words) {
        this.words = words;
    }

    /** How surely a title names a tank, the surest first. */
    private enum Says {
        LABEL,
        TANK,
        PART,
        BARE
    }

    private record Title(Says says, String name) {}

    /**
     * The name of the surest title, of several the one nearest to the table.
     *
     * @param bare whether a title of a few words that are not any log's may be a name without more
     */
    Optional<String> name(List<Line> lines, boolean bare) {
        List<Title> titles = lines.stream()
                .flatMap(l -> IntStream.range(0, l.cells().size()).boxed().flatMap(i -> title(l.cells(), i).stream()))
                .filter(t -> bare || t.says() != Says.BARE)
                .toList();
        return Stream.of(Says.values())
                .flatMap(s -> titles.stream().filter(t -> t.says() == s).reduce((a, b) -> b).stream())
                .findFirst()
                .map(Title::name);
    }

    private Optional<Title> title(List<Cell> line, int i) {
        String text = line.get(i).shown();
        Matcher label = LABELLED.matcher(text);
        if (label.matches() && tankWord(label.group(1))) {
            String behind = label.group(2).isBlank() && i + 1 < line.size()
                    ? line.get(i + 1).shown()
                    : label.group(2);
            return labelled(behind);
        }
        Matcher inside = INSIDE.matcher(text);
        while (inside.find()) {
            if (tankWord(inside.group(1))) {
                return labelled(inside.group(2));
            }
        }
        if (i > 0 && tankWord(line.get(i - 1).shown().replaceFirst("\\s*[:=]\\s*$", ""))) {
            return labelled(text);
        }
        boolean none = text.contains("=") || headsNumbers(line);
        return none ? Optional.empty() : nameLike(VolumeText.without(text)) ? pieces(text) : leading(text);
    }

    /** The first part of a longer title where it says tank: {@code Pier tank (old form, see the next sheet)}. */
    private Optional<Title> leading(String text) {
        String first = PIECES.split(VolumeText.without(text).strip())[0];
        boolean says = saysTank(first) && nameLike(first) && WORDS.split(first.strip()).length <= FEW_WORDS;
        return says ? named(Says.TANK, first) : Optional.empty();
    }

    /** A word with numbers beside it is what they are, not a name. */
    private boolean headsNumbers(List<Cell> line) {
        return line.stream().filter(c -> words.kind(c) == Kind.NUMBER).count() >= 2;
    }

    /** What stands behind {@code Tank:}, up to the next sign. */
    private Optional<Title> labelled(String behind) {
        String[] pieces = PIECES.split(VolumeText.without(behind).strip());
        String name = pieces.length == 0 ? "" : pieces[0].strip();
        boolean fits = name.chars().anyMatch(Character::isLetter)
                && name.length() <= LONGEST
                && nameLike(name)
                && !bare(name + " x").equals("x");
        return fits ? Optional.of(new Title(Says.LABEL, name)) : Optional.empty();
    }

    /** The name that stands behind a word for a tank in one of the lines. */
    Optional<String> labelled(List<Line> lines) {
        return lines.stream()
                .flatMap(l -> IntStream.range(0, l.cells().size()).boxed().flatMap(i -> title(l.cells(), i).stream()))
                .filter(t -> t.says() == Says.LABEL)
                .map(Title::name)
                .findFirst();
    }

    /** Of a title in parts the one that says tank, or the last that not every log's title has. */
    private Optional<Title> pieces(String title) {
        List<String> pieces = Stream.of(PIECES.split(VolumeText.without(title)))
                .filter(p -> !p.isBlank())
                .toList();
        List<Title> named = pieces.stream()
                .flatMap(p -> named(saysTank(p) ? Says.TANK : pieces.size() > 1 ? Says.PART : Says.BARE, p).stream())
                .toList();
        boolean parted = pieces.size() > named.size();
        return named.stream()
                .filter(t -> t.says() == Says.TANK)
                .findFirst()
                .or(() -> named.stream().reduce((a, b) -> b))
                .map(t -> t.says() == Says.PART && !parted ? new Title(Says.BARE, t.name()) : t);
    }

    private Optional<Title> named(Says says, String text) {
        boolean numbered = saysTank(text) && text.chars().anyMatch(Character::isDigit);
        String said = bare(text);
        String name = said.isEmpty() && numbered ? text.strip() : said;
        boolean unit = name.length() == 1 || words.kind(name) == Kind.UNIT;
        boolean fits = !name.isEmpty() && !unit && name.length() <= LONGEST && nameLike(text);
        return fits ? Optional.of(new Title(says, name)) : Optional.empty();
    }

    /** The text without its general words, months and years; empty where nothing but words for a tank is left. */
    private String bare(String text) {
        List<String> kept = Stream.of(WORDS.split(text.strip()))
                .filter(w -> tankWord(w) || !says(w))
                .toList();
        return kept.stream().allMatch(this::tankWord) ? "" : String.join(" ", kept);
    }

    /** A few words side by side; a text that says something about the sheet has a verb or another small word in it. */
    boolean nameLike(String text) {
        List<String> said = Stream.of(WORDS.split(Names.fold(text)))
                .filter(w -> !w.isEmpty())
                .toList();
        boolean sentence = text.strip().matches(".*[;!?].*|.*\\.\\s.*");
        return !sentence && said.size() <= MOST_WORDS && said.stream().noneMatch(w -> titleWord(w, "sentence"));
    }

    /** {@code Reef log}, {@code Reef doses 2026}: the sheet's name without the year and the words for what is kept on it. */
    String unlogged(String sheet) {
        String name = Stream.of(sheet.strip().split("\\s+"))
                .filter(w -> !titleWord(w, "kept") && !YEAR.matcher(w).matches())
                .collect(Collectors.joining(" "));
        return name.chars().noneMatch(Character::isLetter) ? sheet.strip() : name;
    }

    /** Whether a sheet's name is one any log may have. */
    boolean general(String sheet) {
        boolean numbered = saysTank(sheet) && sheet.chars().anyMatch(Character::isDigit);
        boolean said = Stream.of(WORDS.split(Names.fold(sheet)))
                .allMatch(w -> COUNTED.matcher(w).matches()
                        || Stream.of(w.split("[^\\p{L}]+")).allMatch(this::says));
        return (said && !numbered) || words.month(sheet).isPresent() || Dates.week(sheet);
    }

    /** Whether a text is about a tank's size and names nothing: {@code Water volume, 2026}. */
    boolean saysSize(String text) {
        List<String> said = Stream.of(WORDS.split(Names.fold(text)))
                .filter(w -> !w.isEmpty())
                .toList();
        return said.stream().anyMatch(w -> titleWord(w, "size"))
                && said.stream().allMatch(w -> titleWord(w, "size") || says(w));
    }

    boolean saysTank(String text) {
        return Stream.of(WORDS.split(Names.fold(text))).anyMatch(this::tankWord);
    }

    private boolean tankWord(String text) {
        return titleWord(text.strip(), "tank") || titleWord(text.strip().replaceFirst("(?i)\\s+name$", ""), "tank");
    }

    private boolean titleWord(String word, String means) {
        return words.titleWord(word, means);
    }

    private boolean says(String word) {
        String folded = Names.fold(word);
        return folded.isEmpty()
                || titleWord(folded, "general")
                || titleWord(folded, "kept")
                || titleWord(folded, "tank")
                || COUNTED.matcher(folded).matches()
                || words.monthName(folded)
                || Dates.weekday(folded).isPresent()
                || words.label(word).known();
    }
}
