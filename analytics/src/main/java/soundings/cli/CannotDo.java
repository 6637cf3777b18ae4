package soundings.cli;

/** Something asked for could not be done; the message says what, where and what to do, and is all the user sees. */
final class CannotDo extends RuntimeException {
    private static final long serialVersionUID = 1L;

    CannotDo(String message) {
        super(message);
    }

    CannotDo(String message, Throwable cause) {
        super(message, cause);
    }
}
