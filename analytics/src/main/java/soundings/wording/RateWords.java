package soundings.wording;

import java.util.Map;
import java.util.Set;

/** The words around an amount a day: what may lead it, stand between, tell a new setting or that dosing ended. */
final class RateWords {
    static final Set<String> LEAD = Set.of(
            "dosing",
            "dose",
            "doses",
            "daily",
            "set",
            "now",
            "changed",
            "change",
            "raised",
            "raise",
            "lowered",
            "lower",
            "increased",
            "increase",
            "reduced",
            "reduce",
            "decreased",
            "decrease",
            "started",
            "start",
            "upped",
            "currently",
            "new",
            "the",
            "still",
            "doser",
            "running",
            ":",
            "-",
            "and",
            "&",
            "•",
            "today",
            "dosage",
            "rate",
            "to",
            "at",
            "of",
            "is",
            "up",
            "down",
            "*",
            "put",
            "turned",
            "auto",
            "automatic",
            "gave",
            "giving");
    static final Set<String> BETWEEN = Set.of(
            "dose",
            "dosing",
            "dosed",
            "doser",
            "pump",
            "at",
            "to",
            "up",
            "down",
            "now",
            "is",
            "set",
            "=",
            ":",
            "-",
            "raised",
            "lowered",
            "increased",
            "reduced",
            "decreased",
            "back",
            "rate",
            "~",
            "on",
            "each",
            "changed",
            "still",
            "of",
            "auf",
            "jetzt",
            "nun",
            "op",
            "naar");
    static final Set<String> RELATIVE =
            Set.of("+", "by", "extra", "more", "less", "another", "plus", "minus", "max", "limit");
    /** Before a colon they tell which way a new setting goes: {@code alk less: 10 ml a day}. */
    static final Set<String> COMPARED = Set.of("less", "more");

    /** Right before an amount they tell by how much: {@code up 5 ml}. */
    static final Set<String> TURNS = Set.of("up", "down");

    static final Set<String> STOPPED = Set.of(
            "stopped",
            "stop",
            "paused",
            "pause",
            "off",
            "halted",
            "ceased",
            "stopping",
            "ended",
            "suspended",
            "gestoppt",
            "abgesetzt",
            "arrete",
            "arretee",
            "parado",
            "suspendido",
            "gestopt");
    /** Words that tell of a new setting. */
    static final Set<String> SETTING = Set.of(
            "now",
            "set",
            "to",
            "raised",
            "lowered",
            "increased",
            "reduced",
            "decreased",
            "changed",
            "back",
            "up",
            "down");

    /** Words behind a rate that change nothing about it. */
    static final Set<String> DONE = Set.of(
            "now",
            "today",
            "again",
            "total",
            "erhoht",
            "gesenkt",
            "reduziert",
            "verringert",
            "eingestellt",
            "augmente",
            "reduit",
            "aumentado",
            "reducido",
            "verhoogd",
            "verlaagd",
            "gestellt",
            "gesetzt",
            "gezet",
            "ingesteld",
            "gedoseerd",
            "dosiert");

    static final Set<String> FROM = Set.of("from", "since", "starting", "ab", "seit", "as");
    static final Set<String> PART_OF_DAY =
            Set.of("morning", "evening", "am", "pm", "noon", "night", "mornings", "evenings");
    static final Map<String, Integer> TIMES = Map.ofEntries(
            Map.entry("once", 1),
            Map.entry("twice", 2),
            Map.entry("two", 2),
            Map.entry("three", 3),
            Map.entry("thrice", 3),
            Map.entry("four", 4),
            Map.entry("six", 6),
            Map.entry("eight", 8),
            Map.entry("zweimal", 2),
            Map.entry("dreimal", 3),
            Map.entry("viermal", 4),
            Map.entry("sechsmal", 6),
            Map.entry("deux", 2),
            Map.entry("trois", 3),
            Map.entry("quatre", 4),
            Map.entry("dos", 2),
            Map.entry("tres", 3),
            Map.entry("cuatro", 4),
            Map.entry("tweemaal", 2),
            Map.entry("driemaal", 3),
            Map.entry("viermaal", 4),
            Map.entry("twee", 2),
            Map.entry("drie", 3),
            Map.entry("vier", 4));
    static final Set<String> EVERY = Set.of("every", "alle", "elke", "om", "cada", "toutes", "tous");
    static final Set<String> ARTICLES = Set.of("de", "les");
    static final Set<String> SECOND = Set.of("other", "second");
    static final Set<String> DAYS = Set.of("day", "days", "d", "tage", "dagen", "dias", "jours");
    static final Set<String> HOURS =
            Set.of("hour", "hours", "h", "hrs", "stunden", "std", "uur", "uren", "horas", "heures");

    private RateWords() {}
}
