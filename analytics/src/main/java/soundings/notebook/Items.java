package soundings.notebook;

import java.util.List;

/** Every item a notebook can ask for. To add one: a function from the findings to items, and a line here. */
final class Items {
    static final List<Offered> ALL = List.of(
            Offered.whole("actions", "what to do, most pressing first", ActionItems::all),
            Offered.whole("summary", "every tank and test: level, use, drift, verdict", SummaryItems::summary),
            Offered.ofKind(
                    "summary_of",
                    "the tests of one kind: ion, trace, nutrient, toxin or condition",
                    SummaryItems::kind),
            Offered.whole("changes", "what changed since the month before", ChangeItems::changes),
            Offered.whole("followed", "last month's advice: was it followed, what did it do", FollowedItems::followed),
            Offered.whole("mentor", "what a mentor wrote into earlier reports", MentorItems::mentor),
            Offered.ofTank("ranges", "a tank's tests, each against its range", RangeItems::ranges),
            Offered.ofTest("level", "a test's readings and estimated level", LevelItems::level),
            Offered.ofTest("working", "how a proposed dose was worked out", WorkingItems::working),
            Offered.ofTank("doing", "what goes into a tank and what was done to it this month", DoingItems::doing),
            Offered.whole("questions", "what is open, with room for an answer", QuestionItems::questions),
            Offered.whole("supplies", "pumps and containers: what is left, when to order", PumpItems::supplies),
            Offered.ofTank("day_plan", "the hours a tank's pumps work at", PumpItems::dayPlan),
            Offered.ofTank("together", "what several tests of a tank tell together", InsightItems::insights),
            Offered.ofTank("new_tank", "a tank that is run in: when it is ready", NewTankItems::newTank),
            Offered.of("course", "course", "a course of treatment, day by day", CourseItems::course),
            Offered.of("move", "move", "the two tanks of a move side by side", CareMoveItems::move),
            Offered.ofTank("months", "a tank's tests month by month", MonthItems::months),
            Offered.ofTank("remarks", "what the keeper wrote this month besides tests", RemarkItems::remarks),
            Offered.whole("jobs", "jobs put off, what may cost lives first", JobItems::jobs),
            Offered.whole("jobs_pace", "how long jobs waited, by month", JobItems::pace),
            Offered.whole("light", "light by place against the range stated", LightItems::light),
            Offered.whole("losses", "losses with what the water did before", AnimalItems::losses),
            Offered.whole("animals", "moves, condition and feeding", AnimalItems::notes),
            Offered.whole("testing", "tests overdue or too frequent, their cost, kits", TestingItems::testing),
            Offered.whole("not_understood", "cells that were not understood", IssueItems::issues),
            Offered.whole("set_aside", "readings that were read and not used", IssueItems::setAside),
            Offered.whole("columns", "how each column of the log was read", ReadingItems::columns),
            Offered.whole("sea", "what the open sea holds of what was tested", SeaItems::sea),
            Offered.whole(
                    "units", "the unit each test is shown in, where it is not worked out in it", UnitItems::units),
            Offered.whole("constants", "the constants and where they come from", SourceItems::constants),
            Offered.whole("equations", "the published relations and where they hold", SourceItems::equations),
            Offered.whole("ranges_used", "the ranges tests were judged by", SourceItems::targets),
            Offered.whole("provenance", "file, setup, options, version", SourceItems::provenance));

    private Items() {}
}
