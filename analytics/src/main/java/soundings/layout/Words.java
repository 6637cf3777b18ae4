package soundings.layout;

import java.time.LocalTime;
import java.time.YearMonth;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import soundings.chemistry.Reference;
import soundings.setup.Setup;
import soundings.sheet.Cell;
import soundings.sheet.Value;
import soundings.wording.AmountText;
import soundings.wording.Amounts;
import soundings.wording.Containers;
import soundings.wording.Dates;
import soundings.wording.DatesInText;
import soundings.wording.DecimalMark;
import soundings.wording.HeaderMeaning;
import soundings.wording.Headers;
import soundings.wording.Named;
import soundings.wording.TimedAmounts;
import soundings.wording.Vocabulary;
import soundings.wording.VolumeUnit;
import soundings.wording.WrittenAmount;
import soundings.wording.WrittenDate;

/** The meanings of a workbook's texts, each text looked up once. */
final class Words {
    /** Below this a header's words alone say too little. */
    static final double CLEAR = 0.45;

    private static final Pattern YEAR = Pattern.compile("\\b(19[89][0-9]|20[0-6][0-9])\\b");

    private final Vocabulary vocabulary;
    private Vocabulary running;
    private Optional<Containers.Bucket> bucket = Optional.empty();
    private final Tanks tanks;
    private final Map<String, YearMonth> sheetMonths = new HashMap<>();
    private final Map<String, Label> labels = new HashMap<>();
    private final Map<String, Label> together = new HashMap<>();
    private final Map<String, Kind> kinds = new HashMap<>();
    private final Map<DecimalMark, Map<String, AmountText>> amounts = new EnumMap<>(DecimalMark.class);
    private final Map<String, Optional<WrittenDate>> dates = new HashMap<>();
    private final Map<String, Optional<VolumeUnit>> volumes = new HashMap<>();
    private final Map<String, Boolean> rated = new HashMap<>();
    private final Map<String, Optional<Integer>> months = new HashMap<>();

    private Words(Vocabulary vocabulary, Tanks tanks) {
        this.vocabulary = vocabulary;
        this.running = vocabulary;
        this.tanks = tanks;
    }

    static Words of(Reference reference, Setup setup) {
        List<Named> additives = setup.additives().stream()
                .map(a -> new Named(a.name(), a.writtenAs()))
                .toList();
        List<Named> tanks = setup.tanks().stream()
                .map(t -> new Named(t.name(), t.writtenAs()))
                .toList();
        return new Words(Vocabulary.of(reference, additives, tanks), Tanks.of(setup));
    }

    /** @param months the month of each sheet named by one, its year worked out where it is not written */
    Words withMonths(Map<String, YearMonth> months) {
        sheetMonths.putAll(months);
        return this;
    }

    /** The same, for a log whose headings name these tanks. */
    Words knowing(Tanks met) {
        List<Named> named = met.all().stream().map(t -> new Named(t, List.of())).toList();
        return new Words(vocabulary.with(List.of(), named), met).withMonths(sheetMonths);
    }

    /** Names met in the log, which running text may use as well. */
    void learn(List<Named> additives, List<Named> named) {
        running = vocabulary.with(additives, named);
    }

    /** What a bucket holds, where the log tells it. */
    void learn(Optional<Containers.Bucket> told) {
        bucket = told;
    }

    Optional<Containers.Bucket> bucket() {
        return bucket;
    }

    /** What running text is read with. */
    Vocabulary running() {
        return running;
    }

    Label label(Cell cell) {
        return cell.value()
                .match(
                        t -> label(t.text()),
                        n -> Label.UNKNOWN,
                        m -> Label.UNKNOWN,
                        f -> Label.UNKNOWN,
                        f -> Label.UNKNOWN);
    }

    Label label(String text) {
        return labels.computeIfAbsent(
                text, t -> tanks.findNamed(t).map(Label::tank).orElseGet(() -> clear(Headers.read(t, vocabulary))));
    }

    private static Label clear(List<HeaderMeaning> meanings) {
        return meanings.stream()
                .filter(m -> m.score() >= CLEAR)
                .findFirst()
                .map(Labels::of)
                .orElse(Label.UNKNOWN);
    }

    /** A label that stands among tests, where a single letter such as {@code K} can be meant as one. */
    Label inCompany(String text) {
        return together.computeIfAbsent(
                text, t -> tanks.findNamed(t).map(Label::tank).orElseGet(() -> among(t)));
    }

    private Label among(String text) {
        return clear(Headers.readTogether(List.of(text, "calcium", "magnesium"), vocabulary)
                .get(0));
    }

    Kind kind(Cell cell) {
        return cell.value()
                .match(t -> kind(t.text()), n -> Kind.NUMBER, m -> Kind.DATE, f -> Kind.FAULT, f -> Kind.FAULT);
    }

    Kind kind(String text) {
        return kinds.computeIfAbsent(text, this::findKind);
    }

    private Kind findKind(String text) {
        if (isUnit(text)) {
            return Kind.UNIT;
        }
        if (date(text).filter(d -> d.sure() >= 0.55 && !d.readings().isEmpty()).isPresent()) {
            return Kind.DATE;
        }
        return Amounts.read(text, DecimalMark.UNDECIDED, vocabulary)
                .match(
                        w -> Kind.NUMBER,
                        s -> Kind.NUMBER,
                        s -> Kind.NUMBER,
                        n -> Kind.NOTHING,
                        u -> label(text).known() ? Kind.LABEL : Kind.WORDS);
    }

    /** Whether the text is a unit and nothing else: an amount with it in front is one without a rest. */
    private boolean isUnit(String text) {
        boolean starts = !text.isBlank() && !Character.isDigit(text.strip().charAt(0)) && text.length() < 40;
        return starts && unitOf(text).isPresent();
    }

    private Optional<String> unitOf(String text) {
        Optional<WrittenAmount> one = Amounts.read("1 " + text, DecimalMark.POINT, vocabulary)
                .match(
                        w -> Optional.of(w.amount()),
                        s -> Optional.empty(),
                        s -> Optional.empty(),
                        n -> Optional.empty(),
                        u -> Optional.empty());
        return one.filter(a -> !a.unit().isEmpty() && a.note().isEmpty()).map(WrittenAmount::unit);
    }

    private Optional<WrittenDate> date(String text) {
        return dates.computeIfAbsent(text, Dates::read);
    }

    Optional<WrittenDate> date(Cell cell) {
        return cell.value() instanceof Value.Text text ? date(text.text()) : Dates.read(cell.value());
    }

    /** The day, year and all, that a cell holds or a text names along the way. */
    Optional<WrittenDate> day(Cell cell) {
        return cell.value() instanceof Value.Text text
                ? DatesInText.only(text.text())
                : cell.value() instanceof Value.Moment
                        ? Dates.read(cell.value()).filter(d -> !d.days().isEmpty())
                        : Optional.empty();
    }

    Optional<LocalTime> time(Cell cell) {
        return date(cell).flatMap(WrittenDate::time);
    }

    Optional<YearMonth> month(String text) {
        return Dates.month(text)
                .filter(m -> m.year().isPresent())
                .map(m -> YearMonth.of(m.year().orElse(2000), m.month()))
                .or(() -> Optional.ofNullable(sheetMonths.get(text)));
    }

    /** The month that a text names and nothing else, 1 to 12, whether or not it says the year. */
    Optional<Integer> monthNamed(Cell cell) {
        return cell.value() instanceof Value.Text text
                ? months.computeIfAbsent(text.text(), t -> Dates.month(t).map(m -> m.month()))
                : Optional.empty();
    }

    /** Whether a label names the size of a tank: {@code Volume}, {@code Tank litres}. */
    boolean tankSize(String text) {
        return vocabulary.tankSize(text.replaceFirst("\\s*[:=]\\s*$", ""));
    }

    /** Whether a word of a title means this: {@code tank}, {@code general}, {@code kept}, {@code sentence}. */
    boolean titleWord(String word, String means) {
        return vocabulary.titleWord(word).filter(means::equals).isPresent();
    }

    boolean monthName(String word) {
        return Dates.month(word).isPresent();
    }

    /** A year that stands in a text by itself. */
    OptionalInt year(String text) {
        Matcher year = YEAR.matcher(text);
        return year.find() ? OptionalInt.of(Integer.parseInt(year.group())) : OptionalInt.empty();
    }

    boolean ditto(Cell cell) {
        return amount(cell, DecimalMark.POINT)
                .match(w -> false, s -> false, s -> false, AmountText.Nothing::ditto, u -> false);
    }

    boolean derived(Cell cell) {
        return kind(cell) != Kind.NOTHING && label(cell).role() == Role.DERIVED;
    }

    /** Whether the text names something that is dosed. */
    boolean additive(String text) {
        Label label = label("dose " + text + " ml/day");
        return label.role() == Role.DOSE
                && !label.name().isEmpty()
                && !Character.isDigit(text.strip().charAt(0));
    }

    /** An additive's name: the keeper's own for it, or as written. */
    String additiveName(String text) {
        Label label = label("dose " + text + " ml/day");
        return label.role() == Role.DOSE && !label.name().isEmpty() ? label.name() : text;
    }

    /** The unit of volume, or the share, that stands in a text. */
    Optional<VolumeUnit> volume(String text) {
        return volumes.computeIfAbsent(
                text,
                t -> Headers.read("wc " + t, vocabulary).stream()
                        .map(Labels::of)
                        .filter(l -> l.role() == Role.WATER_CHANGE && l.volume() != VolumeUnit.UNWRITTEN)
                        .map(Label::volume)
                        .findFirst());
    }

    AmountText amount(Cell cell, DecimalMark mark) {
        return cell.value() instanceof Value.Text text
                ? amounts.computeIfAbsent(mark, m -> new HashMap<>())
                        .computeIfAbsent(text.text(), t -> Amounts.read(t, mark, vocabulary))
                : Amounts.read(cell.value(), mark, vocabulary);
    }

    /** The amounts of a cell that holds several of one day, each with its time; empty for any other cell. */
    List<TimedAmounts.Timed> timed(Cell cell, DecimalMark mark) {
        return cell.value() instanceof Value.Text text
                        && kind(cell) != Kind.NOTHING
                        && text.text().length() < 80
                ? TimedAmounts.in(text.text(), mark, vocabulary)
                : List.of();
    }

    /** The figure that a cell shows, whatever its unit. */
    OptionalDouble number(Cell cell) {
        return cell.value() instanceof Value.Numeric numeric
                ? OptionalDouble.of(numeric.number())
                : amount(cell, DecimalMark.UNDECIDED)
                        .match(
                                w -> OptionalDouble.of(w.amount().amount().about()),
                                s -> OptionalDouble.empty(),
                                s -> OptionalDouble.empty(),
                                n -> OptionalDouble.empty(),
                                u -> OptionalDouble.empty());
    }

    /** Whether a text says how much a day. */
    boolean rated(String text) {
        return rated.computeIfAbsent(text, t -> Headers.rated(t, vocabulary));
    }

    /** Millilitres a day in one of a dose's unit; NaN where it is no volume, {@code mg/L} among others. */
    double mlPerDay(String unit) {
        Label rate = label("dose a " + unit);
        boolean inWater = VolumeUnit.of(unit).isEmpty() && unitOf(unit).isPresent();
        return rated(unit)
                ? rate.mlPerDay()
                : volume(unit)
                        .filter(v -> !inWater)
                        .map(VolumeUnit::litres)
                        .map(l -> l.orElse(Double.NaN) * 1000)
                        .orElse(Double.NaN);
    }

    /** Whether a unit counts what is put in: no result is told in it. */
    boolean millilitres(String unit) {
        return VolumeUnit.of(unit).filter(v -> v == VolumeUnit.MILLILITRE).isPresent();
    }

    /** Whether a word of a heading says nothing of what stands below. */
    boolean filler(String word) {
        return Headers.filler(word);
    }

    /** Whether a cell holds a volume in millilitres, perhaps a day. */
    boolean putIn(Cell cell) {
        return cell.value() instanceof Value.Text text
                && text.text().toLowerCase(java.util.Locale.ROOT).contains("ml")
                && amount(cell, DecimalMark.UNDECIDED)
                        .match(w -> w.amount().unit(), s -> "", s -> "", n -> "", u -> "")
                        .toLowerCase(java.util.Locale.ROOT)
                        .startsWith("ml");
    }

    /** A label with a unit that stands in a cell of its own. */
    Label withUnit(Label label, String unit) {
        Optional<VolumeUnit> volume = volume(unit);
        boolean counted = label.role() == Role.WATER_CHANGE || label.role() == Role.DOSE;
        return counted && volume.isPresent()
                ? label.withVolume(volume.get())
                : label.withUnit(unitOf(unit).orElse(unit));
    }
}
