package org.plumbrow.schedule.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.database.BranchWall;
import org.plumbrow.demo.LoadedDemo;
import org.plumbrow.schedule.activity.Pin;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** A manager moves one work of the demo by a day: the plan bends around it and is not made anew. */
@LoadedDemo
class SmallMoveOnDemoTest {

    private static final int WORKS = 40;

    /** So many dates a small move may touch; the demo lies on other days each day: tried at most 85, most often 4 or fewer. */
    private static final int MOST = 150;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    WhatIf whatIf;

    @Autowired
    PlanInputs inputs;

    @Autowired
    PlanForecasting forecasting;

    private <T> T seen(Supplier<T> work) {
        return BranchWall.everywhere(() -> transaction.execute(status -> work.get()));
    }

    private List<UUID> planned() {
        return seen(() -> jdbc.sql("select branch_id from plan where state = 'PUBLISHED'")
                .query(UUID.class)
                .list());
    }

    @Test
    void aWorkThatMovesByADayTakesFewOthersWithIt() {
        await().atMost(Duration.ofMinutes(3)).until(() -> !planned().isEmpty());
        List<Integer> moved = seen(() -> moves(planned().get(0)));
        assertThat(moved).isNotEmpty().allSatisfy(dates -> assertThat(dates).isLessThanOrEqualTo(MOST));
        assertThat(moved.stream().sorted().toList().get(moved.size() / 2))
                .as("half of the works move at most so many dates")
                .isLessThanOrEqualTo(6);
    }

    private List<Integer> moves(UUID branch) {
        BranchProblem now = inputs.stored(branch);
        return forecasting.published(branch).orElseThrow().rows().stream()
                .filter(row -> row.crewId().isPresent()
                        && !row.isDone()
                        && !row.isPinned()
                        && row.start().isAfter(now.today()))
                .sorted(Comparator.comparing(PlannedRow::start))
                .limit(WORKS)
                .map(row -> {
                    HalfDay next = HalfDay.morning(
                            now.settings().branch().calendar().after(row.start().date(), 1));
                    return whatIf.fixing(branch, row.activityId(), new Pin(next, row.crewId(), "asked for"))
                            .changes()
                            .moves()
                            .size();
                })
                .toList();
    }
}
