package org.plumbrow.calc.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.HalfDay;

/** The rules about crews: somebody does it, who may do it, at one thing at a time, present, and the same for a group. */
final class CrewRules {

    private final PlanCheck check;

    CrewRules(PlanCheck check) {
        this.check = check;
    }

    void checkAll() {
        Map<String, List<Placement>> byCrew = new LinkedHashMap<>();
        Map<String, List<Placement>> byGroup = new LinkedHashMap<>();
        for (Activity activity : check.problem.activities()) {
            Optional<Placement> placement = check.plan.of(activity.id());
            boolean crewWork = activity.work() instanceof Work.ByCrew && !(activity.fix() instanceof Fix.Done);
            if (placement.isPresent() && crewWork) {
                hasACrewThatMay(activity, placement.get());
                placement
                        .get()
                        .crewId()
                        .ifPresent(crew -> byCrew.computeIfAbsent(crew, none -> new ArrayList<>())
                                .add(placement.get()));
                activity.continuityGroup()
                        .ifPresent(group -> byGroup.computeIfAbsent(
                                        activity.projectId() + '\n' + group, none -> new ArrayList<>())
                                .add(placement.get()));
            }
        }
        byCrew.values().forEach(this::isAtOneThingAtATime);
        byGroup.values().forEach(this::isOneCrew);
    }

    private void hasACrewThatMay(Activity activity, Placement placement) {
        Optional<Crew> crew = check.crewOf(placement);
        if (crew.isEmpty()) {
            check.breach(Breach.Rule.NO_CREW, activity, "%s has no crew.".formatted(check.name(activity)));
            return;
        }
        Work.ByCrew work = (Work.ByCrew) activity.work();
        boolean begunWith =
                activity.fix() instanceof Fix.Begun begun && begun.crewId().isPresent();
        boolean may = crew.get().skills().containsAll(work.skills())
                && work.halfDaysByCrew().containsKey(crew.get().id());
        if (!may && !begunWith) {
            check.breach(
                    Breach.Rule.SKILL,
                    activity,
                    "%s is given to %s, who may not do it."
                            .formatted(check.name(activity), crew.get().name()));
        }
        isPresentAtBothEnds(activity, placement, crew.get());
    }

    private void isPresentAtBothEnds(Activity activity, Placement placement, Crew crew) {
        for (HalfDay end : List.of(placement.start(), placement.finish())) {
            if (HalfDayCount.isAway(crew, end)) {
                check.breach(
                        Breach.Rule.CREW_AWAY,
                        activity,
                        "%s is planned for %s, when %s is away."
                                .formatted(check.name(activity), end.words(), crew.name()));
            }
        }
    }

    private void isAtOneThingAtATime(List<Placement> bookings) {
        List<Placement> inTime = new ArrayList<>(bookings);
        inTime.sort(Comparator.comparing(Placement::start));
        Placement longest = inTime.get(0);
        for (Placement next : inTime.subList(1, inTime.size())) {
            if (!next.start().isAfter(longest.finish())) {
                Activity activity = check.activities.get(next.activityId());
                Activity other = check.activities.get(longest.activityId());
                check.breach(
                        Breach.Rule.CREW_TWICE,
                        activity,
                        other,
                        "%s is booked twice on %s: %s and %s."
                                .formatted(
                                        check.words.crew(next.crewId().orElseThrow()),
                                        DayWords.of(next.start().date()),
                                        check.name(other),
                                        check.name(activity)));
            }
            longest = next.finish().isAfter(longest.finish()) ? next : longest;
        }
    }

    private void isOneCrew(List<Placement> group) {
        Placement first = group.get(0);
        for (Placement next : group) {
            if (!next.crewId().equals(first.crewId())) {
                Activity activity = check.activities.get(next.activityId());
                Activity other = check.activities.get(first.activityId());
                check.breach(
                        Breach.Rule.CONTINUITY,
                        activity,
                        other,
                        "%s and %s are for one crew, but two are booked."
                                .formatted(check.name(other), check.name(activity)));
            }
        }
    }
}
