package soundings.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import soundings.advice.Action;
import soundings.advice.Action.Urgency;
import soundings.advice.Advice;
import soundings.chemistry.Part.Harm;

/** What the jobs put off and the kits ask for on the first page. */
public final class UpkeepActions {
    private static final int LONGEST = 100;

    /** A reading older than this does not tell how the light is now; common practice, no source. */
    private static final int LIGHT_DAYS = 92;

    private static final String IN_SMALL_STEPS =
            "change a lamp's strength or height in small steps over weeks (common practice, no source)";

    private UpkeepActions() {}

    /** The advice with what the upkeep asks for; of equally pressing things a job put off stands first. */
    public static Advice amend(Advice advice, Upkeep upkeep) {
        List<Action> actions = Stream.concat(upkeep.actions().stream(), advice.actions().stream())
                .sorted(Comparator.comparing(Action::urgency))
                .toList();
        return new Advice(
                advice.judgements(),
                advice.recommendations(),
                actions,
                advice.supplies(),
                advice.plans(),
                advice.insights());
    }

    static List<Action> of(List<Job> jobs, List<Light> lights, Testing testing, LocalDate asOf) {
        List<Action> actions = new ArrayList<>();
        jobs.stream().filter(Job::open).forEach(j -> actions.add(job(j, asOf)));
        lights(lights, asOf).ifPresent(actions::add);
        testing.kits().forEach(k -> kit(k).ifPresent(actions::add));
        return actions.stream().sorted(Comparator.comparing(Action::urgency)).toList();
    }

    private static Action job(Job job, LocalDate asOf) {
        return new Action(
                urgency(job.harm()),
                job.tank(),
                Optional.empty(),
                "See to this: \"" + cut(job.what()) + "\"",
                why(job, asOf),
                1,
                job.harm() == Harm.FIRE ? "Switch off at the mains first; leave mains wiring to an electrician." : "",
                job.restsOn());
    }

    private static Urgency urgency(Harm harm) {
        return switch (harm) {
            case LIFE, FIRE -> Urgency.NOW;
            case FLOOD -> Urgency.SOON;
            case SLOW -> Urgency.MONTH;
            case UNKNOWN -> Urgency.HANDY;
        };
    }

    private static List<String> why(Job job, LocalDate asOf) {
        List<String> why = new ArrayList<>();
        why.add(waiting(job, asOf));
        if (job.harm() != Harm.UNKNOWN) {
            String about = Stream.of(job.about(), job.risk())
                    .filter(w -> !w.isEmpty())
                    .distinct()
                    .collect(Collectors.joining(", "));
            why.add("at risk: " + job.harm().words() + (about.isEmpty() ? "" : " (" + about + "); common practice"));
        }
        return why;
    }

    /** How long it has waited, in words. */
    static String waiting(Job job, LocalDate asOf) {
        OptionalLong age = job.ageDays(asOf);
        String since = job.noticed().map(d -> "noted on " + d).orElse("noted on a day that is not written");
        String days =
                age.isPresent() ? ", " + age.getAsLong() + (age.getAsLong() == 1 ? " day" : " days") + " ago" : "";
        int notes = job.notes().size();
        return since + days + (notes > 1 ? ", and " + (notes == 2 ? "once" : (notes - 1) + " times") + " again" : "");
    }

    /** Readings of the last months outside the keeper's own numbers, as one errand. */
    private static Optional<Action> lights(List<Light> lights, LocalDate asOf) {
        List<Light> off = lights.stream().filter(l -> isOff(l, asOf)).toList();
        if (off.size() < 2) {
            return off.stream().findFirst().map(UpkeepActions::light);
        }
        boolean several = off.stream().map(Light::tank).distinct().count() > 1;
        return Optional.of(new Action(
                Urgency.MONTH,
                several ? "" : off.get(0).tank(),
                Optional.empty(),
                "Look at the light at " + off.size() + " places",
                off.stream()
                        .map(l -> (several && !l.tank().isEmpty() ? l.tank() + ", " : "") + measured(l) + "; "
                                + reading(l))
                        .toList(),
                List.of(IN_SMALL_STEPS),
                1,
                "",
                off.stream().flatMap(UpkeepActions::places).toList()));
    }

    private static boolean isOff(Light light, LocalDate asOf) {
        boolean off = light.standing() == Light.Standing.BELOW || light.standing() == Light.Standing.ABOVE;
        return off
                && light.last()
                        .filter(m -> !m.on().isBefore(asOf.minusDays(LIGHT_DAYS)))
                        .isPresent();
    }

    private static Action light(Light light) {
        return new Action(
                Urgency.MONTH,
                light.tank(),
                Optional.empty(),
                "Look at the light at " + measured(light),
                List.of(reading(light), IN_SMALL_STEPS),
                1,
                "",
                places(light).toList());
    }

    private static Stream<String> places(Light light) {
        return Stream.concat(light.restsOn().stream(), light.cell().stream());
    }

    /** {@code rock: PAR 290 where you want at most 250}. */
    private static String measured(Light light) {
        boolean low = light.standing() == Light.Standing.BELOW;
        return (light.place().isEmpty() ? "the place measured" : light.place()) + ": PAR "
                + light.last().map(m -> whole(m.par())).orElse("") + " where you want at " + (low ? "least " : "most ")
                + whole((low ? light.low() : light.high()).orElse(0));
    }

    private static String reading(Light light) {
        return light.last().map(m -> "measured on " + m.on()).orElse("")
                + light.before()
                        .map(b -> "; it was " + whole(b.par()) + " on " + b.on())
                        .orElse("");
    }

    private static String whole(double par) {
        return String.valueOf(Math.round(par));
    }

    private static String cut(String text) {
        String plain = text.replaceAll("\\s+", " ").strip();
        return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST - 1) + "…";
    }

    private static Optional<Action> kit(Testing.Kit kit) {
        String name = kit.parameter().name();
        if (!kit.isExpired() && !kit.isNear()) {
            return Optional.empty();
        }
        String when = kit.isExpired() ? "expired on " : "expires on ";
        return Optional.of(new Action(
                kit.isExpired() ? Urgency.SOON : Urgency.HANDY,
                "",
                Optional.of(kit.parameter()),
                "Get a new kit for " + name.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + name.substring(1),
                List.of("the one in use " + when + kit.expires()
                        + (kit.isExpired() ? "; what it reads is not to be trusted" : "")),
                1,
                "",
                List.of(kit.cell())));
    }
}
