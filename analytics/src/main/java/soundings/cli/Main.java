package soundings.cli;

/** Placeholder until the commands stand. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(2);
    }
}
