package org.plumbrow.calc.outage.ranking;

import static org.plumbrow.calc.outage.ranking.SiteClock.DAY;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.plumbrow.calc.calendar.Notice;
import org.plumbrow.calc.outage.WindowQuestion.Promise;
import org.plumbrow.calc.outage.ranking.HourQuestion.StopsCounting;

/** Rules that say the same of every minute of a day. */
final class DayRules {

    private DayRules() {}

    /** @param byDay of each day of the clock */
    record OfDay(List<Factor> byDay) implements Rule {

        static OfDay of(SiteSpans site, Function<LocalDate, Factor> judged) {
            return new OfDay(site.days().map(judged).toList());
        }

        @Override
        public Factor judge(int start) {
            return byDay.get(Math.floorDiv(start, DAY));
        }

        @Override
        public int keepsUntil(int start) {
            return SiteClock.endOfDay(start) - 1;
        }
    }

    static Rule notice(SiteSpans site, HourQuestion question) {
        Notice notice = question.utility().notice();
        return OfDay.of(site, day -> {
            int given = day.isBefore(question.today())
                    ? 0
                    : notice.calendar().fullWorkingDaysBetween(question.today(), day);
            Factor factor = Factor.atLeast(FactorKind.NOTICE, given, notice.fullWorkingDays(), "");
            boolean met = notice.isMet(question.today(), day);
            // A day that the calendar leaves out is judged by its own factor, and so is none short of notice.
            return met || factor.isBroken()
                    ? factor
                    : Factor.atLeast(FactorKind.NOTICE, given, Math.max(given + 1, notice.fullWorkingDays()), "");
        });
    }

    static Rule workDone(SiteSpans site, HourQuestion question) {
        return OfDay.of(site, day -> {
            long early =
                    Math.max(0, ChronoUnit.DAYS.between(day, question.earliest().day()));
            return Factor.atMost(
                    FactorKind.WORK_DONE, early, 0, question.earliest().why());
        });
    }

    /** That which ends first speaks; days behind it are what has to be won. */
    static Rule permits(SiteSpans site, HourQuestion question) {
        Optional<StopsCounting> first = question.permits().stream().min(Comparator.comparing(StopsCounting::lastDay));
        return OfDay.of(site, day -> {
            long behind = first.map(one -> Math.max(0, ChronoUnit.DAYS.between(one.lastDay(), day)))
                    .orElse(0L);
            return Factor.atMost(
                    FactorKind.PERMIT, behind, 0, first.map(StopsCounting::why).orElse(""));
        });
    }

    static Rule promise(SiteSpans site, HourQuestion question, Promise promise) {
        return OfDay.of(site, day -> {
            int late = day.isAfter(promise.latestCutover())
                    ? question.branch().workingDaysIn(promise.latestCutover().plusDays(1), day)
                    : 0;
            Factor factor = Factor.atMost(FactorKind.PROMISE, late, 0, promise.words());
            return factor.isBroken() ? factor.as(Verdict.CAUTION) : factor;
        });
    }

    /** No figure: somebody has to talk with the customer before the day. */
    static Rule medical(SiteSpans site, CustomerDays customer) {
        Factor factor = customer.medicalAgreed()
                ? Factor.atMost(FactorKind.MEDICAL, 0, 0, "")
                : Factor.open(FactorKind.MEDICAL, 0, "");
        return OfDay.of(site, day -> factor);
    }

    /** The whole window by daylight. */
    record ByDaylight(List<List<Integer>> suns, int planned) implements Rule {

        static ByDaylight of(SiteSpans site, HourQuestion question) {
            List<List<Integer>> suns = new ArrayList<>();
            site.days().forEach(day -> {
                Daylight light = question.daylight().get(day);
                suns.add(
                        light == null
                                ? List.of()
                                : List.of(
                                        site.clock().at(day, light.rises()),
                                        site.clock().at(day, light.sets())));
            });
            return new ByDaylight(suns, question.work().planned());
        }

        @Override
        public Factor judge(int start) {
            List<Integer> sun = suns.get(Math.floorDiv(start, DAY));
            return sun.isEmpty()
                    ? Factor.open(FactorKind.DAYLIGHT, 0, "")
                    : Factor.atLeast(
                            FactorKind.DAYLIGHT, Math.min(start - sun.get(0), sun.get(1) - start - planned), 0, "");
        }

        @Override
        public int keepsUntil(int start) {
            List<Integer> sun = suns.get(Math.floorDiv(start, DAY));
            return sun.isEmpty() ? SiteClock.endOfDay(start) - 1 : sun.get(1) - planned;
        }

        int dusk(int start) {
            List<Integer> sun = suns.get(Math.floorDiv(start, DAY));
            return sun.isEmpty() ? SiteClock.NEVER : sun.get(1);
        }
    }
}
