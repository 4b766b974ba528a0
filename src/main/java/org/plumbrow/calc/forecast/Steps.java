package org.plumbrow.calc.forecast;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Spread;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Crew;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.Predecessor;
import org.plumbrow.calc.planning.Work;

/** Makes the steps of a plan, in an order of play in which everything comes behind what it waits for. */
final class Steps {

    private static final Claim[] NOTHING = {};

    private final ForecastQuestion question;
    private final DayTables time;
    private final Map<String, CrewDays> crews = new HashMap<>();
    private final Map<Alike, short[]> tables = new HashMap<>();
    private final Map<String, Integer> place = new LinkedHashMap<>();
    private final List<Activity> order;
    private final Claims claims;

    Steps(ForecastQuestion question, DayTables time, Claims claims) {
        this.question = question;
        this.time = time;
        this.claims = claims;
        for (Crew crew : question.problem().crews()) {
            crews.put(crew.id(), new CrewDays(crew, time));
        }
        order = question.problem().activities().stream()
                .filter(activity -> question.plan().of(activity.id()).isPresent())
                .sorted(Comparator.comparing(
                                (Activity activity) -> placement(activity).start())
                        .thenComparing(activity -> placement(activity).finish()))
                .toList();
        order.forEach(activity -> place.put(activity.id(), place.size()));
    }

    /** Where an activity stands in the order of play; null when the plan could not place it. */
    @Nullable
    Integer placeOf(String activityId) {
        return place.get(activityId);
    }

    List<Step> made() {
        Map<String, List<Step.Arc>> queues =
                question.overtaking() ? Map.of() : new ResourceOrder(question, order).arcs(place);
        List<Step> steps = new ArrayList<>();
        for (Activity activity : order) {
            steps.add(step(activity, queues.getOrDefault(activity.id(), List.of())));
        }
        return steps;
    }

    private Step step(Activity activity, List<Step.Arc> queue) {
        Placement placement = placement(activity);
        boolean isWait = activity.work() instanceof Work.Waiting;
        boolean byCrew = activity.work() instanceof Work.ByCrew;
        return new Step(
                activity.id(),
                earliest(activity, placement),
                arcs(activity, queue),
                draw(activity, placement),
                byCrew ? placement.crewId().map(crews::get).orElse(null) : null,
                activity.work() instanceof Work.Waiting wait ? time.waiting(wait.counting()) : null,
                byCrew && activity.outdoor(),
                question.overtaking() ? claims.of(activity, placement) : NOTHING,
                settledFinish(activity.fix()),
                isWait && activity.fix() instanceof Fix.Begun begun ? time.clock(begun.start()) >> 1 : Step.OPEN);
    }

    private int settledFinish(Fix fix) {
        if (fix instanceof Fix.Done done) {
            return time.clock(done.finish());
        }
        return fix instanceof Fix.Expected expected ? time.clock(expected.answer()) : Step.OPEN;
    }

    /** What has begun is bound by nothing but today; a date told to somebody, or a wait timed to need, is not moved up. */
    private int earliest(Activity activity, Placement placement) {
        if (activity.fix() instanceof Fix.Begun) {
            return time.today;
        }
        int release = activity.release().map(time::slotFrom).orElse(0);
        boolean keepsItsDate = activity.fix() instanceof Fix.Pinned
                || (activity.work() instanceof Work.Waiting wait && wait.justInTime());
        int planned = keepsItsDate ? time.slotFrom(placement.start()) : 0;
        return Math.max(time.today, Math.max(release, planned));
    }

    /** Of what has begun no predecessor is waited for; of what a pin put before its predecessor, only what the plan keeps. */
    private Step.Arc[] arcs(Activity activity, List<Step.Arc> queue) {
        List<Step.Arc> arcs = new ArrayList<>(queue);
        if (activity.fix() instanceof Fix.Free || activity.fix() instanceof Fix.Pinned) {
            int own = place.get(activity.id());
            for (Predecessor link : activity.predecessors()) {
                Integer before = place.get(link.activityId());
                if (before != null && before < own) {
                    arcs.add(new Step.Arc(before, link.lagHalfDays(), 2 * link.lagCalendarDays()));
                }
            }
        }
        return arcs.toArray(Step.Arc[]::new);
    }

    private Draw draw(Activity activity, Placement placement) {
        Uncertainty uncertain = question.uncertain().get(activity.id());
        long key = Draw.key(activity.id());
        if (activity.work() instanceof Work.Waiting wait) {
            return uncertain == null ? Draw.always(wait.days()) : wait(activity, uncertain, wait, key);
        }
        int planned = plannedHalfDays(activity, placement);
        return uncertain == null ? Draw.always(planned) : work(activity, uncertain, planned, key);
    }

    /** Activities alike in these share one table. @param begun half-days left of work, days gone of a wait; -1 not begun */
    private record Alike(Uncertainty uncertain, int begun) {}

    private Draw work(Activity activity, Uncertainty uncertain, int planned, long key) {
        int left = activity.fix() instanceof Fix.Begun ? planned : -1;
        Spread days = uncertain.days();
        // Of work under way the rest is as uncertain as the whole: low, typical and high shrink alike.
        double shrunk = left > 0 && days.typical() > 0 ? left / (2 * days.typical()) : 1;
        return new Draw(
                tables.computeIfAbsent(
                        new Alike(uncertain, left),
                        alike -> Draw.amounts(
                                halfDays -> uncertain.share(halfDays / 2 / shrunk),
                                1,
                                most(2 * uncertain.most() * shrunk))),
                key);
    }

    private Draw wait(Activity activity, Uncertainty uncertain, Work.Waiting wait, long key) {
        int gone = activity.fix() instanceof Fix.Begun begun ? gone(begun, wait) : -1;
        return new Draw(tables.computeIfAbsent(new Alike(uncertain, gone), alike -> waits(uncertain, gone)), key);
    }

    /** Counted days that a wait has lasted without an answer, until yesterday. */
    private int gone(Fix.Begun begun, Work.Waiting wait) {
        int began = Math.max(0, time.clock(begun.start()) >> 1);
        int yesterday = Math.max(began, (time.clockOf[time.today] >> 1) - 1);
        return time.waiting(wait.counting()).between(began, yesterday);
    }

    private static short[] waits(Uncertainty uncertain, int gone) {
        int most = most(uncertain.most());
        if (gone < 0) {
            return Draw.amounts(uncertain::share, 0, most);
        }
        double over = uncertain.share(gone + 0.5);
        // Known: it has not come yet. What is left of the distribution is scaled up to one.
        return Draw.amounts(
                days -> over >= 1 ? 1 : (uncertain.share(days) - over) / (1 - over),
                gone + 1,
                Math.max(most, gone + 1));
    }

    private static int most(double amount) {
        return (int) Math.ceil(amount) + 1;
    }

    private int plannedHalfDays(Activity activity, Placement placement) {
        if (activity.fix() instanceof Fix.Begun begun) {
            return begun.halfDaysLeft();
        }
        if (activity.work() instanceof Work.ByCrew work) {
            return placement.crewId().map(work.halfDaysByCrew()::get).orElse(1);
        }
        return activity.work() instanceof Work.AtDesk desk ? desk.halfDays() : 1;
    }

    private Placement placement(Activity activity) {
        return question.plan().of(activity.id()).orElseThrow();
    }
}
