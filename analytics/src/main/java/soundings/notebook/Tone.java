package soundings.notebook;

/** How words are to be taken; whoever shows it never relies on colour alone, the words say the same. */
public enum Tone {
    PLAIN,
    /** As it should be. */
    CALM,
    /** Worth an eye. */
    WATCH,
    /** Something is to be done. */
    ACT,
    /** Not known well enough. */
    UNSURE,
    /** In the background. */
    QUIET
}
