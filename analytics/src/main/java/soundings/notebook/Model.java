package soundings.notebook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import soundings.advice.Judgement;
import soundings.advice.Verdict;
import soundings.history.TankHistory;

/** What a template can print: maps, lists, texts, numbers and truth values, nothing that can do anything. */
final class Model {
    private Model() {}

    static Map<String, Object> of(View view) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("month", Figures.month(view.findings().month()));
        model.put("month_before", Figures.month(view.findings().month().minusMonths(1)));
        model.put("file", view.findings().provenance().file());
        model.put("version", view.findings().provenance().version());
        model.put("as_of", Figures.day(view.asOf()));
        model.put("readings", readings(view));
        model.put("set_aside_count", (int) view.tests().stream()
                .flatMap(t -> t.series().points().stream())
                .filter(p -> IssueItems.isSetAside(view, p))
                .count());
        model.put("issue_count", view.findings().issues().size());
        model.put("jobs_finding", JobItems.finding(view));
        model.put("light_finding", LightItems.finding(view));
        model.put("animals_finding", AnimalItems.finding(view));
        model.put("testing_finding", TestingItems.finding(view));
        model.put("has_supplies", !view.findings().advice().supplies().isEmpty());
        model.putAll(CareModel.of(view));
        model.put("has_mentor", !view.findings().mentor().isEmpty());
        model.put("tanks", view.tanks().stream().map(tank -> tank(view, tank)).toList());
        return model;
    }

    private static int readings(View view) {
        return view.tests().stream().mapToInt(t -> t.series().points().size()).sum();
    }

    private static Map<String, Object> tank(View view, TankHistory tank) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("key", tank.tank());
        model.put("name", View.name(tank));
        model.put("id", view.tankId(tank.tank()));
        model.put(
                "litres",
                tank.litres().isPresent() ? Figures.number(tank.litres().getAsDouble(), 0) : "");
        model.put(
                "finding",
                view.findings().care().newTanks().stream()
                        .filter(t -> t.tank().equals(tank.tank()) && t.isRunIn())
                        .map(CareWords::newTank)
                        .findFirst()
                        .orElseGet(() -> Sentences.tank(view, tank.tank())));
        model.put(
                "tests",
                view.tests().stream()
                        .filter(t -> t.tank().equals(tank))
                        .map(t -> test(view, t))
                        .toList());
        return model;
    }

    private static Map<String, Object> test(View view, View.Test test) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("key", test.parameter().id());
        model.put("name", test.parameter().name());
        model.put("id", view.testId(test.tankName(), test.parameter()));
        model.put("unit", Figures.unit(test.scale().label()));
        model.put("kind", test.parameter().kind().name().toLowerCase(java.util.Locale.ROOT));
        model.put("finding", Sentences.finding(view, test));
        model.put(
                "because",
                view.judgement(test.tankName(), test.parameter())
                        .map(Judgement::because)
                        .map(Text::sentence)
                        .orElse(""));
        model.put(
                "verdict",
                view.judgement(test.tankName(), test.parameter())
                        .map(Judgement::verdict)
                        .map(Verdict::words)
                        .orElse(""));
        model.put(
                "caveats",
                view.estimate(test.tankName(), test.parameter())
                        .map(e -> e.caveats().stream().map(Text::sentence).toList())
                        .orElse(List.of()));
        return model;
    }
}
