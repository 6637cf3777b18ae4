package soundings.history;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soundings.chemistry.Names;
import soundings.log.AsWritten;
import soundings.log.DoseRate;
import soundings.log.Issue;
import soundings.log.LogEntry;
import soundings.log.OneOffDose;

/** A tank's doses as one course an additive. */
final class Courses {
    /** A rate written again within so many days of the last time only says that nothing changed. */
    private static final long SAME_BREATH_DAYS = 14;

    private Courses() {}

    static List<DoseCourse> of(List<DoseRate> rates, List<OneOffDose> oneOffs, Histories.Ground ground) {
        Map<String, Dosed> byAdditive = new LinkedHashMap<>();
        Map<String, Additives.Match> matches = new HashMap<>();
        rates.forEach(
                r -> dosed(r, r.additive(), byAdditive, matches, ground).rates.add(r));
        oneOffs.forEach(
                o -> dosed(o, o.additive(), byAdditive, matches, ground).oneOffs.add(o));
        return byAdditive.values().stream().map(d -> course(d, ground.issues())).toList();
    }

    private static Dosed dosed(
            LogEntry entry,
            String additive,
            Map<String, Dosed> byAdditive,
            Map<String, Additives.Match> matches,
            Histories.Ground ground) {
        Additives.Match match =
                matches.computeIfAbsent(Names.fold(additive), f -> Additives.match(entry.at(), additive, ground));
        return byAdditive.computeIfAbsent(Names.fold(match.name()), f -> new Dosed(match));
    }

    /** What goes into one course while it is gathered. */
    private static final class Dosed {
        final Additives.Match match;
        final List<DoseRate> rates = new ArrayList<>();
        final List<OneOffDose> oneOffs = new ArrayList<>();

        Dosed(Additives.Match match) {
            this.match = match;
        }
    }

    private static DoseCourse course(Dosed dosed, List<Issue> issues) {
        return new DoseCourse(
                dosed.match.name(), dosed.match.rows(), steps(dosed.rates, issues), oneOffs(dosed.oneOffs, issues));
    }

    private static List<DoseCourse.Step> steps(List<DoseRate> rates, List<Issue> issues) {
        List<DoseRate> starts = starts(rates, issues);
        List<DoseCourse.Step> steps = new ArrayList<>();
        for (int i = 0; i < starts.size(); i++) {
            DoseRate start = starts.get(i);
            Optional<LocalDate> until =
                    i + 1 < starts.size() ? Optional.of(starts.get(i + 1).date()) : Optional.empty();
            steps.add(new DoseCourse.Step(start.date(), until, start.mlPerDay(), start.at()));
        }
        return steps;
    }

    private static List<DoseRate> starts(List<DoseRate> rates, List<Issue> issues) {
        List<DoseRate> starts = new ArrayList<>();
        LocalDate lastWritten = LocalDate.MIN;
        for (DoseRate rate : rates) {
            int last = starts.size() - 1;
            boolean sameRate = last >= 0 && starts.get(last).mlPerDay() == rate.mlPerDay();
            boolean sameDay = last >= 0 && starts.get(last).date().equals(rate.date());
            if (!sameRate && sameDay) {
                issues.add(new HistoryIssues.TwoRatesOneDay(
                        rate.at(), rate.additive(), starts.get(last).at().place()));
                starts.set(last, rate);
            } else if (!sameRate || ChronoUnit.DAYS.between(lastWritten, rate.date()) > SAME_BREATH_DAYS) {
                starts.add(rate);
            }
            lastWritten = rate.date();
        }
        return starts;
    }

    /** Equal doses of one day on two sheets are one dose copied; on one sheet they are two doses. */
    private static List<DoseCourse.OneOff> oneOffs(List<OneOffDose> written, List<Issue> issues) {
        List<DoseCourse.OneOff> doses = new ArrayList<>();
        Map<List<Object>, AsWritten> seen = new HashMap<>();
        for (OneOffDose dose : written) {
            AsWritten first = seen.putIfAbsent(List.of(dose.date(), dose.ml()), dose.at());
            if (first != null && !first.sheet().equals(dose.at().sheet())) {
                issues.add(new HistoryIssues.WrittenTwice(dose.at(), "dose", first.place()));
            } else {
                doses.add(new DoseCourse.OneOff(dose.date(), dose.ml(), dose.at()));
            }
        }
        return doses;
    }
}
