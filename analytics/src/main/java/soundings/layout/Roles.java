package soundings.layout;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import soundings.chemistry.Names;
import soundings.log.Inferred;
import soundings.sheet.Cell;
import soundings.sheet.Value;
import soundings.wording.DatesInText;
import soundings.wording.VolumeUnit;

/** Settles what each column holds from its header, from the values under it and from its neighbours. */
final class Roles {
    private static final double MOST = 0.7;
    private static final double SOME = 0.4;
    private static final Set<Inferred> TANK = Set.of(Inferred.TANK);
    private static final String KNOWN = "tanks' names stand in it";
    private static final String NAMES = "rows of one day differ by it, and each name's values run on by themselves";

    /** {@code Alk: 8.2} is more than a test's name. */
    private static final Pattern RESULT = Pattern.compile("[\\s:=][<>~]?[0-9]+([.,][0-9]+)?(?![0-9\\p{L}+-])");

    private final Words words;
    private final Tanks tanks;

    private Roles(Words words, Tanks tanks) {
        this.words = words;
        this.tanks = tanks;
    }

    static Shape settle(Shape shape, Words words, Tanks tanks) {
        Roles roles = new Roles(words, tanks);
        if (shape.has(Role.PRICE) && !shape.has(Role.READING)) {
            return shape.replace(f -> !f.role().dates(), f -> f.with(Label.of(Role.IGNORED, 0.8)));
        }
        Shape dated = diary(roles.oneDate(roles.datesByValue(DateParts.settle(HeadedDays.open(shape)))));
        Shape named = roles.additivesByValue(roles.resultsByValue(
                roles.testsByValue(roles.tanksByValue(roles.dosesByUnit(roles.dosesOfTopic(dated))))));
        return oneChange(roles.restByValue(roles.namesOfOneDay(
                roles.tanksByNames(roles.columnsOfTopic(HeadedDays.settle(roles.amounts(roles.doses(named))))))));
    }

    /** A change written as a share and in litres is one change. */
    private static Shape oneChange(Shape shape) {
        List<Field> changes = shape.all(Role.WATER_CHANGE).stream()
                .filter(f -> f.label().tank().isEmpty())
                .toList();
        Optional<Field> share = changes.stream()
                .filter(f -> f.label().volume() == VolumeUnit.PERCENT)
                .findFirst();
        return share.isEmpty()
                ? shape
                : shape.replace(
                        f -> changes.contains(f) && !f.equals(share.get()) && beside(shape, f, share.get()),
                        f -> f.with(Label.of(Role.DERIVED, 0.8)));
    }

    /** Nearly every row that holds one holds the other. */
    private static boolean beside(Shape shape, Field one, Field other) {
        Set<Integer> rows =
                shape.column(other).cells().stream().map(c -> c.at().row()).collect(Collectors.toSet());
        List<Cell> own = shape.column(one).cells();
        return own.stream().filter(c -> rows.contains(c.at().row())).count() >= 0.9 * own.size();
    }

    private static boolean daysCount(Shape shape, Field field) {
        boolean months = shape.topic().daysCount() || shape.has(Role.MONTH);
        return months && (field.role().dates() || field.labels().isEmpty());
    }

    private static boolean dated(Shape shape, Field field) {
        Column column = shape.column(field);
        return column.size() == 0 ? false : column.dated(daysCount(shape, field)) >= 0.5;
    }

    /** Where no header says "date" over dates, the first column that holds them is it. */
    private Shape datesByValue(Shape shape) {
        boolean said = shape.fields().stream().anyMatch(f -> f.role().dates() && dated(shape, f));
        if (said) {
            return shape;
        }
        Optional<Field> found = shape.fields().stream()
                .filter(f -> f.role() == Role.UNKNOWN || f.role().corner())
                .filter(f -> shape.column(f).dated(daysCount(shape, f)) >= 0.6)
                .findFirst();
        Shape bare = shape.replace(f -> f.role().dates() || f.role() == Role.UNTIL, f -> demoted(shape, f));
        return found.map(f -> bare.replace(
                        f::equals,
                        g -> g.guessed(Label.of(Role.DATE, 0.7), Set.of(Inferred.DATE), "dates stand in it")))
                .orElse(bare);
    }

    private Field demoted(Shape shape, Field field) {
        boolean span = field.role() == Role.FROM || field.role() == Role.UNTIL;
        boolean days = span
                ? shape.column(field).count(Kind.DATE) > 0
                : shape.column(field).days() > 0;
        return days || shape.column(field).textual() ? field : field.with(Label.UNKNOWN);
    }

    /** One column dates the rows; others that hold dates are kept out. */
    private Shape oneDate(Shape shape) {
        Optional<Field> chosen = shape.all(Role.DATE).stream()
                .filter(f -> dated(shape, f))
                .findFirst()
                .or(shape::findDate);
        boolean from = chosen.map(f -> f.role() == Role.FROM).orElse(false);
        Shape asked = chosen.filter(f -> !from)
                .flatMap(f -> RivalDates.ways(shape, f, words))
                .map(shape::doubted)
                .orElse(shape);
        return asked.replace(
                f -> f.role() == Role.DATE && !from && chosen.filter(f::equals).isEmpty(),
                f -> f.with(Label.of(Role.IGNORED, 0.5)));
    }

    /** A column of names that are tanks' elsewhere in the workbook. */
    static Shape tanksByValue(Shape shape, Words words, Tanks named) {
        return !shape.dated() ? shape : new Roles(words, named).tanksByValue(shape);
    }

    /** Without a column of dates, texts that each begin with a day are a diary. */
    private static Shape diary(Shape shape) {
        if (shape.findDate().isPresent()) {
            return shape;
        }
        return first(shape, f -> (f.role() == Role.UNKNOWN || f.role() == Role.NOTE) && begins(shape.column(f)))
                .map(f -> shape.replace(
                        f::equals,
                        g -> g.guessed(
                                Label.of(Role.NOTE, 0.7), Set.of(Inferred.DATE), "each text begins with its day")))
                .orElse(shape);
    }

    private static boolean begins(Column column) {
        long days = column.textual() && column.size() >= 2
                ? column.cells().stream()
                        .filter(c -> DatesInText.leading(c.shown()).isPresent())
                        .count()
                : 0;
        return days >= 2 && days >= 0.5 * column.size();
    }

    private Shape tanksByValue(Shape shape) {
        if (shape.findTank().isPresent()) {
            return shape;
        }
        return first(
                        shape,
                        f -> mayName(shape, f)
                                && known(shape, f, t -> tanks.findKnown(t).isPresent()))
                .map(f -> shape.replace(f::equals, g -> g.guessed(Label.of(Role.TANK, 0.8), TANK, KNOWN)))
                .orElse(shape);
    }

    /** Names that come again and again beside values of their own are the tanks'; where that is open the keeper is asked. */
    private Shape tanksByNames(Shape shape) {
        if (shape.has(Role.TANK) || !shape.dated() || shape.fields().stream().noneMatch(Roles::tanked)) {
            return shape;
        }
        List<Field> open =
                shape.fields().stream().filter(f -> mayName(shape, f)).toList();
        Optional<Field> found = open.stream()
                .filter(f -> RepeatedNames.weigh(shape, f, words) == RepeatedNames.Verdict.TANKS)
                .findFirst();
        Optional<Field> asked = found.isPresent()
                ? Optional.empty()
                : open.stream()
                        .filter(f -> f.role() == Role.UNKNOWN)
                        .filter(f -> RepeatedNames.weigh(shape, f, words) == RepeatedNames.Verdict.UNDECIDED)
                        .findFirst();
        Shape named = found.map(f -> shape.replace(f::equals, g -> g.guessed(Label.of(Role.TANK, 0.6), TANK, NAMES)))
                .orElse(shape);
        return asked.map(f -> named.replace(f::equals, g -> g.guessed(Label.UNKNOWN, TANK, NAMES)))
                .orElse(named);
    }

    /** Several results of one test on the one day of a table, told apart by names alone: whose they are is asked. */
    private Shape namesOfOneDay(Shape shape) {
        boolean several = shape.titledDay().isPresent()
                && !shape.has(Role.TANK)
                && shape.all(Role.READING).stream()
                        .anyMatch(f -> shape.column(f).size() > 1);
        return !several
                ? shape
                : first(shape, f -> f.role() != Role.NOTE && mayName(shape, f) && allDiffer(shape.column(f)))
                        .map(f -> shape.replace(f::equals, g -> g.guessed(Label.UNKNOWN, TANK, NAMES)))
                        .orElse(shape);
    }

    private static boolean allDiffer(Column column) {
        return column.size() > 1
                && column.different() == column.size()
                && column.textual()
                && column.cells().stream().noneMatch(c -> RepeatedNames.tellsWhen(Names.fold(c.shown())));
    }

    private static boolean tanked(Field field) {
        return field.role().gives()
                && field.role() != Role.NOTE
                && field.label().tank().isEmpty();
    }

    private static boolean mayName(Shape shape, Field field) {
        boolean idleTest = field.role() == Role.TEST && !shape.has(Role.RESULT);
        return field.role() == Role.UNKNOWN || field.role() == Role.NOTE || idleTest;
    }

    private Shape testsByValue(Shape shape) {
        boolean tested = shape.fields().stream().anyMatch(f -> f.role() == Role.READING);
        if (tested || shape.all(Role.TEST).stream().anyMatch(f -> namesTests(shape, f))) {
            return shape;
        }
        return first(shape, f -> f.role() == Role.UNKNOWN && namesTests(shape, f))
                .map(f -> shape.replace(
                        f::equals,
                        g -> g.guessed(
                                Label.of(Role.TEST, 0.8), Set.of(Inferred.PARAMETER), "tests' names stand in it")))
                .orElse(shape);
    }

    /** Of two columns that may name tests, the one that holds numbers holds the results: "Parameter", "Measured". */
    private Shape resultsByValue(Shape shape) {
        boolean named = !shape.has(Role.RESULT) && shape.all(Role.TEST).stream().anyMatch(f -> namesTests(shape, f));
        return !named
                ? shape
                : first(shape, f -> f.role() == Role.TEST && shape.column(f).share(Kind.NUMBER) >= 0.6)
                        .or(() -> onlyNumbers(shape))
                        .map(f -> shape.replace(f::equals, g -> g.with(Label.of(Role.RESULT, 0.8))))
                        .orElseGet(() -> resultsByTank(shape));
    }

    /** Beside the tests' names several columns of numbers, each under a name of its own: a column a tank. */
    private Shape resultsByTank(Shape shape) {
        List<Field> open = numbered(shape);
        TankTitles titles = new TankTitles(words);
        boolean names = open.size() > 1
                && headed(open)
                && open.stream()
                        .map(Field::header)
                        .allMatch(h -> titles.nameLike(h) && !titles.general(h) && !HeadedTanks.tellsHow(h, words));
        return !names
                ? shape
                : shape.replace(
                        open::contains,
                        f -> f.guessed(
                                Label.of(Role.RESULT, 0.7).withTank(f.header().strip()), TANK, HeadedTanks.BECAUSE));
    }

    /** The one column of numbers whose heading nobody knows. */
    private static Optional<Field> onlyNumbers(Shape shape) {
        List<Field> open = numbered(shape);
        boolean others = shape.fields().stream()
                .filter(f -> f.role() == Role.UNKNOWN && !open.contains(f))
                .anyMatch(f -> shape.column(f).share(Kind.NUMBER) >= 0.3);
        return open.size() == 1 && !others ? Optional.of(open.get(0)) : Optional.empty();
    }

    private static List<Field> numbered(Shape shape) {
        return shape.fields().stream()
                .filter(f -> f.role() == Role.UNKNOWN && shape.column(f).share(Kind.NUMBER) >= 0.6)
                .toList();
    }

    /** Doses and water changes may stand among the tests, and under a heading that says tests anything that is ticked off. */
    private boolean namesTests(Shape shape, Field field) {
        List<String> texts =
                shape.column(field).cells().stream().limit(200).map(Cell::shown).toList();
        long tests = texts.stream().filter(this::namesTest).count();
        long others = texts.stream()
                .map(t -> words.label(t).role())
                .filter(r -> r == Role.DOSE || r == Role.WATER_CHANGE)
                .count();
        boolean most = field.role() == Role.TEST || tests + others >= MOST * texts.size();
        return tests > 0 && tests >= SOME * texts.size() && most;
    }

    private boolean namesTest(String text) {
        return words.inCompany(text).parameter().isPresent()
                && !RESULT.matcher(text).find();
    }

    private Shape additivesByValue(Shape shape) {
        boolean doses = shape.fields().stream()
                .anyMatch(f -> (f.role() == Role.DOSE && f.label().name().isEmpty())
                        || (f.role() == Role.AMOUNT && poured(shape, f)));
        if (!doses || shape.has(Role.ADDITIVE)) {
            return shape;
        }
        Predicate<Field> open = f -> f.role() == Role.UNKNOWN || f.role() == Role.TEST || f.role() == Role.NOTE;
        return first(shape, open.and(f -> known(shape, f, words::additive)))
                .map(f -> shape.replace(f::equals, g -> g.with(Label.of(Role.ADDITIVE, 0.8))))
                .orElse(shape);
    }

    /** An amount is one of an additive where it is a volume, or where doses are what the table is about. */
    private boolean poured(Shape shape, Field field) {
        return shape.topic().about(Role.DOSE)
                || words.volume(field.header()).isPresent()
                || shape.find(Role.UNIT).filter(u -> volumes(shape, u)).isPresent()
                || mostlyPoured(shape.column(field));
    }

    /** Most units are volumes: a list of all sorts has others for its results. */
    private boolean volumes(Shape shape, Field units) {
        List<Cell> cells = shape.column(units).cells();
        long volumes = cells.stream()
                .map(Cell::shown)
                .filter(u -> !Double.isNaN(words.mlPerDay(u)))
                .count();
        return volumes * 2 > cells.size();
    }

    /** In a list of all sorts some amounts are volumes put in; in one of doses most are. */
    private boolean mostlyPoured(Column column) {
        long poured = column.cells().stream().filter(words::putIn).count();
        return poured * 2 > column.size();
    }

    /** Most of the column's texts pass. */
    private boolean known(Shape shape, Field field, Predicate<String> test) {
        List<Cell> cells = shape.column(field).cells();
        long passed =
                cells.stream().limit(200).filter(c -> test.test(c.shown())).count();
        return passed > 0 && passed >= MOST * Math.min(200, cells.size());
    }

    /** A column that says "doses" and holds sentences is a note. */
    private Shape doses(Shape shape) {
        return shape.replace(
                f -> f.role() == Role.DOSE
                        && f.label().name().isEmpty()
                        && shape.column(f).textual(),
                f -> f.with(Label.of(Role.NOTE, 0.7)));
    }

    /** Under a title such as {@code Dosing (ml per day)} a test's name without a unit is what is dosed for it. */
    private Shape dosesOfTopic(Shape shape) {
        boolean rated = shape.topic().about(Role.DOSE)
                && shape.table().titleTexts().stream().anyMatch(words::rated);
        return !rated
                ? shape
                : shape.replace(
                        f -> f.role() == Role.READING && f.label().unit().isEmpty(),
                        f -> f.guessed(dose(f), Set.of(Inferred.PARAMETER), "the table is about doses"));
    }

    /** Under the name of a test stand volumes: what is put in, not what was found. */
    private Shape dosesByUnit(Shape shape) {
        return shape.replace(
                f -> f.role() == Role.READING && volumes(shape.column(f)),
                f -> f.guessed(dose(f), Set.of(Inferred.PARAMETER), "volumes stand in it"));
    }

    private boolean volumes(Column column) {
        int texts = column.size() - numbers(column);
        long volumes = texts * 2 < column.size()
                ? 0
                : column.cells().stream().filter(words::putIn).count();
        return volumes > 0 && volumes >= 0.6 * column.size();
    }

    private static int numbers(Column column) {
        return (int) column.cells().stream()
                .filter(c -> c.value() instanceof Value.Numeric)
                .count();
    }

    private Label dose(Field field) {
        return words.label("dose " + field.header() + " ml/day");
    }

    /** "Amount" takes its sense from what the rows name, or from what the table is about. */
    private Shape amounts(Shape shape) {
        Role sense = shape.has(Role.ADDITIVE) || shape.topic().about(Role.DOSE)
                ? Role.DOSE
                : shape.topic().about(Role.WATER_CHANGE)
                        ? Role.WATER_CHANGE
                        : shape.has(Role.TEST) ? Role.RESULT : Role.UNKNOWN;
        return shape.replace(f -> f.role() == Role.AMOUNT, f -> f.with(amount(f, sense)));
    }

    private Label amount(Field field, Role sense) {
        VolumeUnit volume = words.volume(field.header()).orElse(field.label().volume());
        return field.label().withRole(sense).withVolume(volume);
    }

    /** A column without a meaning of its own takes the table's: litres on a sheet of water changes, a tank's column on a sheet of one test. */
    private Shape columnsOfTopic(Shape shape) {
        Label topic = shape.topic().subject();
        boolean gives = shape.fields().stream()
                .filter(f -> f.role() != Role.RESULT || shape.has(Role.TEST))
                .anyMatch(f -> f.role().gives() && f.role() != Role.NOTE);
        boolean named = shape.has(Role.TEST) || topic.known();
        Shape byTank = named ? shape.replace(f -> tankColumn(shape, f), f -> f.with(ofTank(shape, f, topic))) : shape;
        if (gives || !topic.known()) {
            return byTank;
        }
        List<Field> open = byTank.fields().stream().filter(f -> open(byTank, f)).toList();
        boolean tanks = topic.role() == Role.READING && open.size() > 1 && headed(open);
        return byTank.replace(
                open::contains,
                f -> tanks
                        ? f.guessed(ofTopic(f, topic).withTank(f.header().strip()), TANK, HeadedTanks.BECAUSE)
                        : f.with(ofTopic(f, topic)));
    }

    /** Each column has a name of its own. */
    private static boolean headed(List<Field> fields) {
        return fields.stream().noneMatch(f -> f.header().isBlank())
                && fields.stream().map(f -> Tanks.key(f.header())).distinct().count() == fields.size();
    }

    private static boolean tankColumn(Shape shape, Field field) {
        return field.role() == Role.TANK
                && !field.label().tank().isEmpty()
                && shape.column(field).count(Kind.NUMBER) > 0;
    }

    private static Label ofTank(Shape shape, Field field, Label topic) {
        Label label = shape.has(Role.TEST) ? Label.of(Role.RESULT, 0.8) : topic;
        return label.withTank(field.label().tank());
    }

    private static boolean open(Shape shape, Field field) {
        boolean result = field.role() == Role.RESULT && !shape.has(Role.TEST);
        return (field.role() == Role.UNKNOWN || result) && shape.column(field).share(Kind.NUMBER) >= 0.6;
    }

    private Label ofTopic(Field field, Label topic) {
        VolumeUnit volume = words.volume(field.header()).orElse(topic.volume());
        return topic.withVolume(volume);
    }

    /** Sentences under an unknown header are notes; a result without a test is nothing. */
    private Shape restByValue(Shape shape) {
        Shape noted = shape.replace(
                f -> (f.role() == Role.UNKNOWN || f.role() == Role.RESULT && !shape.has(Role.TEST))
                        && sentences(shape.column(f)),
                f -> f.with(Label.of(Role.NOTE, 0.5)));
        return noted.replace(f -> f.role() == Role.RESULT && !noted.has(Role.TEST), f -> f.with(Label.UNKNOWN));
    }

    private static boolean sentences(Column column) {
        return column.textual() && column.manyWords() * 2 >= column.size();
    }

    private static Optional<Field> first(Shape shape, Predicate<Field> test) {
        return shape.fields().stream().filter(test).findFirst();
    }
}
