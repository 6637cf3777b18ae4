package soundings.layout;

import java.util.Optional;
import soundings.chemistry.Parameter;
import soundings.wording.VolumeUnit;

/**
 * What the words of a header say.
 *
 * @param unit of a test, as the reference spells it where it knows it; empty when none is written
 * @param name the additive, empty when none is written
 * @param volume what water changes and single doses are counted in
 * @param mlPerDay what one of a dose column's numbers is, in millilitres a day; zero for single doses, NaN where
 *     it is one of several a day and how many is not said
 * @param tank a tank named in the same header, empty when none is
 */
record Label(
        Role role,
        Optional<Parameter> parameter,
        String unit,
        String name,
        VolumeUnit volume,
        double mlPerDay,
        String tank,
        double score) {
    static final Label UNKNOWN = of(Role.UNKNOWN, 0);

    static Label of(Role role, double score) {
        return new Label(role, Optional.empty(), "", "", VolumeUnit.UNWRITTEN, 1, "", score);
    }

    /** A heading that is a tank's name and nothing else. */
    static Label tank(String name) {
        return of(Role.TANK, 1).withTank(name);
    }

    boolean known() {
        return role != Role.UNKNOWN;
    }

    /** Whether a dose column holds single doses rather than rates. */
    boolean oneOff() {
        return role == Role.DOSE && mlPerDay == 0;
    }

    Label withRole(Role other) {
        return new Label(other, parameter, unit, name, volume, mlPerDay, tank, score);
    }

    Label withUnit(String other) {
        return new Label(role, parameter, other, name, volume, mlPerDay, tank, score);
    }

    Label withMlPerDay(double other) {
        return new Label(role, parameter, unit, name, volume, other, tank, score);
    }

    Label withTank(String other) {
        return new Label(role, parameter, unit, name, volume, mlPerDay, other, score);
    }

    Label withVolume(VolumeUnit other) {
        return new Label(role, parameter, unit, name, other, mlPerDay, tank, score);
    }

    Label withParameter(Parameter other) {
        return new Label(Role.READING, Optional.of(other), unit, name, volume, mlPerDay, tank, score);
    }
}
