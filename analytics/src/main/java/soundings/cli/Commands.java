package soundings.cli;

import java.time.Clock;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;

/** Hands each command the console and the clock: the only wiring there is. */
final class Commands implements IFactory {
    private final Console console;
    private final Clock clock;

    Commands(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public <K> K create(Class<K> type) throws Exception {
        Object made = switch (type.getSimpleName()) {
            case "ReportCommand" -> new ReportCommand(console, clock);
            case "InspectCommand" -> new InspectCommand(console, clock);
            case "SetupCommand" -> new SetupCommand(console, clock);
            case "WatchCommand" -> new WatchCommand(console, clock);
            case "StarterCommand" -> new StarterCommand(console);
            case "NotebooksCommand" -> new NotebooksCommand(console);
            default -> CommandLine.defaultFactory().create(type);
        };
        return type.cast(made);
    }
}
