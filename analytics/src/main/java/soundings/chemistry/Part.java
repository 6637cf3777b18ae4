package soundings.chemistry;

/**
 * A piece of a tank's equipment and the worst that can come of it when its repair is put off.
 *
 * @param general a word such as pump, that may mean one of several pieces
 * @param risk a sentence's end: what happens
 * @param source a key of the sources
 */
public record Part(String id, String name, boolean general, Harm harm, String risk, String source) {
    /** What is at risk, the worst first. */
    public enum Harm {
        LIFE("animals' lives"),
        FIRE("fire, electric shock"),
        FLOOD("a flood"),
        SLOW("slow harm"),
        UNKNOWN("not clear from the words");

        private final String words;

        Harm(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        /** Whether an animal or a person may die of it. */
        public boolean isLifeThreatening() {
            return this == LIFE || this == FIRE;
        }
    }
}
