package soundings.care;

import java.util.Optional;
import soundings.chemistry.Names;
import soundings.history.History;
import soundings.history.TankHistory;
import soundings.setup.Setup;

/** Which tank a name means. */
final class Where {
    private Where() {}

    static Optional<TankHistory> find(History history, String written) {
        return history.tanks().stream()
                .filter(t -> same(history.setup(), written, t.tank()))
                .findFirst();
    }

    static boolean same(Setup setup, String written, String tank) {
        return Names.fold(written).equals(Names.fold(tank))
                || setup.findTank(written).map(t -> t.isCalled(tank)).orElse(false);
    }
}
