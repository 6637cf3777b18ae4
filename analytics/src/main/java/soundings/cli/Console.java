package soundings.cli;

import java.io.PrintWriter;

/** Where the program speaks: results on standard output, progress and problems on standard error. */
final class Console {
    private final PrintWriter out;
    private final PrintWriter err;
    private final boolean terminal;
    private volatile boolean quiet;

    Console(PrintWriter out, PrintWriter err, boolean terminal) {
        this.out = out;
        this.err = err;
        this.terminal = terminal;
    }

    void quiet(boolean quiet) {
        this.quiet = quiet;
    }

    PrintWriter out() {
        return out;
    }

    void result(String line) {
        out.println(line);
    }

    /** Said even when quiet: something could not be done. */
    synchronized void problem(String line) {
        err.println(line);
    }

    /** Worth saying, but not a failure. */
    synchronized void notice(String line) {
        if (!quiet) {
            err.println(line);
        }
    }

    /** Said to whoever sits at a terminal, and to nobody else: what goes into a pipe or a file stays as it is. */
    synchronized void said(String line) {
        if (terminal && !quiet) {
            err.println(line);
        }
    }

    /** What is going on, for someone who waits at a terminal; overwritten by the next. */
    synchronized void progress(String line) {
        if (terminal && !quiet) {
            err.print("\r\u001b[K" + line);
            err.flush();
        }
    }

    synchronized void progressDone() {
        if (terminal && !quiet) {
            err.print("\r\u001b[K");
            err.flush();
        }
    }
}
