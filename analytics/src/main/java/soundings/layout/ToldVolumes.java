package soundings.layout;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import soundings.log.AsWritten;
import soundings.log.VolumeTold;
import soundings.sheet.Cell;
import soundings.wording.VolumeText;

/** The volumes of tanks that stand in the log where the setup tells none: {@code Lagoon 300 L} in a title, in a heading, beside {@code Volume}. */
final class ToldVolumes {
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
        return Stream.concat(titled, headed).filter(v -> !known(v.tank())).toList();
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
                        .flatMap(i ->
                                told(area.written(cells.get(i)), tank, i > 0 && size(cells.get(i - 1))).stream()));
    }

    private boolean size(Cell cell) {
        return context.words().tankSize(cell.shown());
    }

    private Optional<VolumeTold> told(AsWritten at, String tank, boolean said) {
        String text = at.text();
        String label = text.contains(":") ? text.substring(0, text.indexOf(':')) : "";
        boolean ofTank = said
                || titles.saysTank(text)
                || context.words().tankSize(label)
                || (" " + Tanks.key(text) + " ").contains(" " + Tanks.key(tank) + " ");
        // A title over a diary of several tanks may name another of them.
        String whose = context.tanks().findIn(text).orElse(tank);
        return VolumeText.in(text)
                .filter(v -> ofTank)
                .map(v -> new VolumeTold(
                        at, whose, text.substring(v.from(), v.to()).strip(), litres(v)));
    }

    private OptionalDouble litres(VolumeText volume) {
        OptionalDouble one = VolumeUnits.litres(volume.unit(), context);
        return one.isPresent() ? OptionalDouble.of(one.getAsDouble() * volume.number()) : one;
    }
}
