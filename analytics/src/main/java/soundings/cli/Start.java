package soundings.cli;

/**
 * Where the jar starts. Apart from {@link Main}, and without its libraries, so that a process that only starts a second one is over
 * its own beginning in a moment.
 */
public final class Start {
    private Start() {}

    public static void main(String[] args) {
        int done = ShortRun.of(args);
        if (done == ShortRun.NOT_WANTED) {
            Main.main(args);
        } else {
            System.exit(done);
        }
    }
}
