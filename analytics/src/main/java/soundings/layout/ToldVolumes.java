package soundings.layout;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import soundings.log.AsWritten;
import soundings.log.VolumeTold;
import soundings.sheet.Cell;
import soundings.wording.VolumeText;

/** The volumes of tanks that stand in the log where the setup tells none: {@code Lagoon 300 L} in a title, in a heading, beside {@code Volume}. */
final class ToldVolumes {
    private static final Pattern UNIT = Pattern.compile("\\s*[(\\[]\\s*([\\p{L} ]+?)\\s*[)\\]]\\s*[:=]?\\s*$");

    /** A longer text tells of more than a tank and its size. */
    private static final int LONGEST = 80;

    private final Context context;
    private final TankTitles titles;

    ToldVolumes(Context context) {
        this.context = context;
        this.titles = new TankTitles(context.words());
    }

    /** What a table tells of the tank it is about, and its headings of others. */
    List<VolumeTold> in(Shape shape, String tank) {
        Area area = shape.table().area();
        Stream<VolumeTold> titled = lines(
                area, shape.dated() ? shape.table().titles() : shape.table().lines(), tank);
        Stream<VolumeTold> headed = shape.fields().stream()
                .filter(f -> !f.label().tank().isEmpty())
                .flatMap(f -> f.labels().stream()
                        .flatMap(c -> told(area.written(c), f.label().tank(), true).stream()));
        return Stream.of(titled, headed, beside(shape, tank), listed(shape))
                .flatMap(v -> v)
                .filter(v -> !known(v.tank()))
                .toList();
    }

    /** A list of tanks with their litres. */
    private Stream<VolumeTold> listed(Shape shape) {
        List<Line> lines = shape.table().lines();
        Optional<Line> head = shape.dated()
                ? Optional.empty()
                : lines.stream().filter(l -> l.cells().size() > 1).findFirst();
        Optional<Cell> tanks =
                head.flatMap(h -> first(h, c -> titles.saysTank(c.shown()) && titles.general(c.shown())));
        Optional<Cell> sizes = head.flatMap(h -> first(h, c -> size(c.shown()) || large(c.shown())));
        return tanks.isEmpty() || sizes.isEmpty() || tanks.equals(sizes)
                ? Stream.of()
                : lines.stream()
                        .filter(l -> !head.get().equals(l))
                        .flatMap(l -> listed(
                                shape,
                                l.at(tanks.get().at().column()),
                                l.at(sizes.get().at().column()),
                                sizes.get().shown())
                                .stream());
    }

    private static Optional<Cell> first(Line line, Predicate<Cell> test) {
        return line.cells().stream().filter(test).findFirst();
    }

    private Optional<VolumeTold> listed(Shape shape, Optional<Cell> tank, Optional<Cell> size, String header) {
        return tank.flatMap(t -> size.flatMap(s -> {
            AsWritten at = shape.table().area().written(s);
            String written = t.shown().strip();
            String name = context.tanks().findKnown(written).orElse(written);
            return labelled(at, name, large(header) ? "(" + header + ")" : header)
                    .map(v -> new VolumeTold(v.at(), name, v.volume(), v.litres()));
        }));
    }

    private static boolean large(String header) {
        return VolumeText.in("1 " + header.strip()).isPresent();
    }

    /** Behind the headings, over no column, may stand what holds for all: {@code Tank volume: 300 L}. */
    private Stream<VolumeTold> beside(Shape shape, String tank) {
        Set<Integer> empty = shape.fields().stream()
                .filter(f -> f.role() == Role.UNKNOWN && shape.column(f).cells().isEmpty())
                .map(Field::column)
                .collect(Collectors.toSet());
        List<Line> lines = shape.table().band().stream()
                .map(l -> l.cells().stream()
                        .filter(c -> empty.contains(c.at().column()))
                        .toList())
                .filter(cells -> !cells.isEmpty())
                .map(cells -> new Line(cells.get(0).at().row(), cells))
                .toList();
        return lines(shape.table().area(), lines, tank);
    }

    private boolean known(String tank) {
        return context.setup()
                .findTank(tank)
                .filter(t -> t.litres().isPresent())
                .isPresent();
    }

    private Stream<VolumeTold> lines(Area area, Collection<Line> lines, String tank) {
        return lines.stream()
                .map(Line::cells)
                .flatMap(cells -> IntStream.range(0, cells.size())
                        .boxed()
                        .flatMap(i -> i > 0 && size(cells.get(i - 1).shown())
                                ? labelled(
                                        area.written(cells.get(i)),
                                        tank,
                                        cells.get(i - 1).shown())
                                        .stream()
                                : told(area.written(cells.get(i)), tank, false).stream()));
    }

    private boolean size(String label) {
        return context.words().tankSize(UNIT.matcher(label).replaceFirst(""));
    }

    private Optional<VolumeTold> told(AsWritten at, String tank, boolean said) {
        String text = at.text();
        String label = text.contains(":") ? text.substring(0, text.indexOf(':')) : "";
        boolean ofTank = said
                || titles.saysTank(text)
                || size(label)
                || titles.saysSize(VolumeText.without(text))
                || Tanks.standsIn(tank, text);
        return text.length() > LONGEST
                ? Optional.empty()
                : VolumeText.in(text).filter(v -> ofTank).map(v -> told(at, text, tank, v));
    }

    /** {@code Volume | 300 L}, or {@code Volume (L) | 300}. */
    private Optional<VolumeTold> labelled(AsWritten at, String tank, String label) {
        Matcher unit = UNIT.matcher(label);
        String text = VolumeText.in(at.text()).isEmpty() && unit.find() ? at.text() + " " + unit.group(1) : at.text();
        return VolumeText.in(text).map(v -> told(at, text, tank, v));
    }

    /** A title over a diary of several tanks may name another of them. */
    private VolumeTold told(AsWritten at, String text, String tank, VolumeText volume) {
        String whose = context.tanks().findIn(at.text()).orElse(tank);
        return new VolumeTold(
                at, whose, text.substring(volume.from(), volume.to()).strip(), litres(volume));
    }

    private OptionalDouble litres(VolumeText volume) {
        OptionalDouble one = VolumeUnits.litres(volume.unit(), context);
        return one.isPresent() ? OptionalDouble.of(one.getAsDouble() * volume.number()) : one;
    }
}
