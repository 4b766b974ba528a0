package org.plumbrow.calc.planning;

import java.util.Optional;
import org.plumbrow.calc.calendar.HalfDay;

/** The rules about dates: nothing too early, nothing on a day off, order, duration, and what was settled before. */
final class TimeRules {

    private final PlanCheck check;
    private final HalfDayCount count;

    TimeRules(PlanCheck check) {
        this.check = check;
        count = new HalfDayCount(check.problem);
    }

    void checkAll() {
        for (Activity activity : check.problem.activities()) {
            check.plan.of(activity.id()).ifPresent(placement -> {
                boolean open = activity.fix() instanceof Fix.Free || activity.fix() instanceof Fix.Pinned;
                if (open) {
                    startsInTime(activity, placement);
                    followsItsPredecessors(activity, placement);
                }
                worksOnWorkingDays(activity, placement);
                takesItsTime(activity, placement);
                keepsWhatIsSettled(activity, placement);
            });
        }
    }

    private void startsInTime(Activity activity, Placement placement) {
        HalfDay earliest = check.problem.today();
        boolean freeToWait = activity.fix() instanceof Fix.Free;
        if (freeToWait && activity.release().filter(earliest::isBefore).isPresent()) {
            earliest = activity.release().orElseThrow();
        }
        if (placement.start().isBefore(earliest)) {
            check.breach(
                    Breach.Rule.TOO_EARLY,
                    activity,
                    "%s starts on %s, before %s."
                            .formatted(check.name(activity), placement.start().words(), earliest.words()));
        }
    }

    private void followsItsPredecessors(Activity activity, Placement placement) {
        for (Predecessor link : activity.predecessors()) {
            Activity first = check.activities.get(link.activityId());
            Optional<Placement> before = check.plan.of(first.id());
            boolean inOrder = before.isPresent()
                    && !placement.start().isBefore(count.readyAfter(before.get().finish(), link));
            if (!inOrder) {
                check.breach(
                        Breach.Rule.ORDER,
                        activity,
                        first,
                        "%s starts on %s, but %s comes first and %s."
                                .formatted(
                                        check.name(activity),
                                        placement.start().words(),
                                        check.name(first),
                                        before.map(done -> "ends " + PlanWords.when(done.finish()))
                                                .orElse("has no date")));
            }
        }
    }

    private void worksOnWorkingDays(Activity activity, Placement placement) {
        boolean planned = activity.fix() instanceof Fix.Free
                || activity.fix() instanceof Fix.Pinned
                || activity.fix() instanceof Fix.Begun;
        if (!planned || activity.work() instanceof Work.Waiting) {
            return;
        }
        for (HalfDay end : new HalfDay[] {placement.start(), placement.finish()}) {
            if (!count.isWorking(end)) {
                check.breach(
                        Breach.Rule.DAY_OFF,
                        activity,
                        "%s is planned for %s, a day off.".formatted(check.name(activity), end.words()));
            }
        }
    }

    private void takesItsTime(Activity activity, Placement placement) {
        Optional<HalfDay> finish = expectedFinish(activity, placement);
        if (finish.isPresent() && !finish.get().equals(placement.finish())) {
            check.breach(
                    Breach.Rule.DURATION,
                    activity,
                    "%s ends on %s; from %s it takes until %s."
                            .formatted(
                                    check.name(activity),
                                    placement.finish().words(),
                                    placement.start().words(),
                                    finish.get().words()));
        }
    }

    private Optional<HalfDay> expectedFinish(Activity activity, Placement placement) {
        if (activity.fix() instanceof Fix.Done done) {
            return Optional.of(done.finish());
        }
        if (activity.fix() instanceof Fix.Expected expected) {
            return Optional.of(notPast(expected.answer()));
        }
        if (activity.work() instanceof Work.Waiting wait) {
            HalfDay answer = count.answered(placement.start(), wait);
            return Optional.of(activity.fix() instanceof Fix.Begun ? notPast(answer) : answer);
        }
        Optional<Crew> crew = check.crewOf(placement);
        return halfDays(activity, crew).map(halfDays -> count.finished(placement.start(), halfDays, activity, crew));
    }

    private Optional<Integer> halfDays(Activity activity, Optional<Crew> crew) {
        if (activity.fix() instanceof Fix.Begun begun) {
            return Optional.of(begun.halfDaysLeft());
        }
        if (activity.work() instanceof Work.AtDesk desk) {
            return Optional.of(desk.halfDays());
        }
        return activity.work() instanceof Work.ByCrew work
                ? crew.flatMap(who -> Optional.ofNullable(work.halfDaysByCrew().get(who.id())))
                : Optional.empty();
    }

    private HalfDay notPast(HalfDay answer) {
        HalfDay today = check.problem.today();
        return answer.isBefore(today) ? today : answer;
    }

    private void keepsWhatIsSettled(Activity activity, Placement placement) {
        Optional<HalfDay> start = Optional.empty();
        Optional<String> crew = Optional.empty();
        if (activity.fix() instanceof Fix.Pinned pinned) {
            start = Optional.of(pinned.start());
            crew = pinned.crewId();
        } else if (activity.fix() instanceof Fix.Begun begun) {
            start = activity.work() instanceof Work.Waiting ? Optional.of(begun.start()) : start;
            crew = begun.crewId();
        } else if (activity.fix() instanceof Fix.Done done) {
            start = Optional.of(done.start());
        } else if (activity.fix() instanceof Fix.Expected expected) {
            start = Optional.of(expected.start());
        }
        boolean startKept = start.map(placement.start()::equals).orElse(true);
        boolean crewKept =
                crew.isEmpty() || crew.equals(placement.crewId()) || !(activity.work() instanceof Work.ByCrew);
        if (!startKept || !crewKept) {
            check.breach(
                    Breach.Rule.SETTLED,
                    activity,
                    "%s is placed on %s with %s, not as it was settled."
                            .formatted(
                                    check.name(activity),
                                    placement.start().words(),
                                    placement.crewId().map(check.words::crew).orElse("no crew")));
        }
    }
}
