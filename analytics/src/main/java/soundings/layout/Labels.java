package soundings.layout;

import java.util.Map;
import java.util.Optional;
import soundings.wording.HeaderMeaning;
import soundings.wording.VolumeUnit;

/** From what words can mean to what a column can be. */
final class Labels {
    private static final Map<String, Role> ROLES = Map.ofEntries(
            Map.entry("date", Role.DATE),
            Map.entry("time", Role.TIME),
            Map.entry("tank", Role.TANK),
            Map.entry("test", Role.TEST),
            Map.entry("result", Role.RESULT),
            Map.entry("unit", Role.UNIT),
            Map.entry("note", Role.NOTE),
            Map.entry("dose", Role.DOSE),
            Map.entry("rate", Role.DOSE),
            Map.entry("times", Role.TIMES),
            Map.entry("price", Role.PRICE),
            Map.entry("waterChange", Role.WATER_CHANGE),
            Map.entry("additive", Role.ADDITIVE),
            Map.entry("from", Role.FROM),
            Map.entry("until", Role.UNTIL),
            Map.entry("by", Role.IGNORED),
            Map.entry("kit", Role.METHOD),
            Map.entry("amount", Role.AMOUNT),
            Map.entry("derived", Role.DERIVED));

    private Labels() {}

    static Label of(HeaderMeaning said) {
        Label label = said.meaning()
                .match(
                        t -> label(Role.READING, said).withUnit(t.unit()).withParameter(t.parameter()),
                        d -> dose(d.additive(), VolumeUnit.MILLILITRE, d.mlPerDay(), said),
                        o -> dose(o.additive(), o.unit(), 0, said),
                        c -> label(Role.WATER_CHANGE, said).withVolume(c.unit()),
                        r -> label(ROLES.getOrDefault(r.role(), Role.IGNORED), said));
        return label.withTank(said.tank());
    }

    private static Label label(Role role, HeaderMeaning said) {
        return Label.of(role, said.score());
    }

    private static Label dose(String additive, VolumeUnit unit, double mlPerDay, HeaderMeaning said) {
        return new Label(Role.DOSE, Optional.empty(), "", additive, unit, mlPerDay, said.tank(), said.score());
    }
}
