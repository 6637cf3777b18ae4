package soundings.layout;

import java.util.Optional;
import java.util.stream.Stream;
import soundings.log.AsWritten;
import soundings.log.Issue;
import soundings.log.VolumeTold;
import soundings.sheet.Cell;
import soundings.wording.VolumeText;

/** The volume of a tank that stands in the title over its results, {@code Lagoon 300 L}, where the setup tells none. */
final class ToldVolumes {
    private ToldVolumes() {}

    static Optional<Issue> in(Table table, String tank, Context context) {
        boolean known = context.setup()
                .findTank(tank)
                .filter(t -> t.litres().isPresent())
                .isPresent();
        Stream<Cell> titles = table.titles().stream().flatMap(l -> l.cells().stream());
        return known
                ? Optional.empty()
                : titles.flatMap(c -> told(table.area().written(c), tank).stream())
                        .findFirst();
    }

    private static Optional<Issue> told(AsWritten title, String tank) {
        String text = title.text();
        boolean ofTank = Tanks.saysKind(text) || (" " + Tanks.key(text) + " ").contains(" " + Tanks.key(tank) + " ");
        return VolumeText.in(text)
                .filter(v -> ofTank)
                .map(v -> new VolumeTold(
                        title, tank, text.substring(v.from(), v.to()).strip()));
    }
}
