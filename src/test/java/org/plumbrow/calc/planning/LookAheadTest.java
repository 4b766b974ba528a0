package org.plumbrow.calc.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.plumbrow.calc.planning.SmallBranch.afternoon;
import static org.plumbrow.calc.planning.SmallBranch.morning;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class LookAheadTest {

    private static final LocalDate FIRST = SmallBranch.MONDAY;
    private static final LocalDate SECOND_FRIDAY = LocalDate.of(2027, 3, 12);

    private static LookAhead of(PlanningProblem problem) {
        return new LookAhead(problem, SerialPlanner.plan(problem), FIRST, SECOND_FRIDAY);
    }

    @Test
    void idleRunsEndAtBookingsAndAbsencesButSpanTheWeekend() {
        SmallBranch branch = new SmallBranch()
                .project("s", "Sedge Hollow Dairy")
                .crew("c1", "Crew 1", Set.of("array"), new Absence(morning(10), afternoon(10), "training"));
        branch.activity(branch.work("r", "s", "racking", "array", 3))
                .activity(branch.work("m", "s", "modules", "array", 1).notBefore(afternoon(12)));
        assertThat(of(branch.problem()).idle())
                .containsExactly(
                        new IdleGap("c1", afternoon(2), afternoon(9), 11),
                        new IdleGap("c1", morning(11), morning(12), 3));
    }

    @Test
    void aCrewPinnedToTwoPlacesClashesOnTheCommonHalfDays() {
        SmallBranch branch =
                new SmallBranch().project("s", "Sedge Hollow Dairy").crew("c1", "Crew 1", Set.of("array"));
        branch.activity(branch.work("r", "s", "racking", "array", 4)
                        .fixed(new Fix.Pinned(afternoon(4), Optional.of("c1"))))
                .activity(branch.work("m", "s", "modules", "array", 4)
                        .fixed(new Fix.Pinned(afternoon(5), Optional.of("c1"))));
        assertThat(of(branch.problem()).clashes())
                .containsExactly(new Clash("c1", "r", "m", afternoon(5), morning(8), 2));
    }

    @Test
    void everyHalfDayOfACrewIsWorkedOrAwayOrIdleAndTheSumIsRight() {
        LongStream.range(0, 500).forEach(seed -> {
            PlanningProblem problem = RandomBranch.of(seed, false);
            Plan plan = SerialPlanner.plan(problem);
            LookAhead ahead = new LookAhead(problem, plan, FIRST, SECOND_FRIDAY);
            assertThat(ahead.clashes()).as("seed " + seed).isEmpty();
            for (Crew crew : problem.crews()) {
                long idle = ahead.idle().stream()
                        .filter(gap -> gap.crewId().equals(crew.id()))
                        .mapToInt(IdleGap::halfDays)
                        .sum();
                long expected = FIRST.datesUntil(SECOND_FRIDAY.plusDays(1))
                        .filter(problem.calendar()::isWorking)
                        .flatMap(day -> java.util.stream.Stream.of(
                                org.plumbrow.calc.calendar.HalfDay.morning(day),
                                org.plumbrow.calc.calendar.HalfDay.afternoon(day)))
                        .filter(at -> crew.absences().stream().noneMatch(absence -> absence.holds(at)))
                        .filter(at -> plan.ofCrew(crew.id()).stream()
                                .noneMatch(booked -> !at.isBefore(booked.start()) && !at.isAfter(booked.finish())))
                        .count();
                assertThat(idle).as("seed %d, %s", seed, crew.name()).isEqualTo(expected);
            }
        });
    }
}
