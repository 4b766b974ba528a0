package org.plumbrow.demo;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.demo.DemoCast.Cast;
import org.plumbrow.demo.DemoProjects.Told;
import org.plumbrow.estimate.guarantee.GuaranteeEditing;
import org.plumbrow.estimate.guarantee.PromiseTerms;
import org.plumbrow.project.Stage;
import org.plumbrow.web.Access;
import org.springframework.stereotype.Component;

/** The terms of the guarantees: written before a contract is signed, their first year begun with the hand-over. */
@Component
@WithDemo
class DemoGuarantees implements DemoChapter {

    private static final LocalTime AT_HALF_PAST_TEN = LocalTime.of(10, 30);
    private static final double USUAL_FADING = 0.5;

    private final GuaranteeEditing editing;
    private final Access access;
    private final Map<String, SeedRow> terms;

    DemoGuarantees(GuaranteeEditing editing, Access access) {
        this.editing = editing;
        this.access = access;
        this.terms = SeedRow.of("guarantees.csv").stream()
                .collect(Collectors.toMap(row -> row.text("key"), Function.identity()));
    }

    @Override
    public void before(Stage stage, Told told, Cast cast, Story story, LocalDate day) {
        SeedRow row = terms.get(told.key());
        if (row != null && stage == Stage.SIGNED) {
            write(told, cast, story, day, -1, terms(row, null));
        } else if (row != null && stage == Stage.COMMISSIONED) {
            write(told, cast, story, day, 0, terms(row, day));
        }
    }

    private void write(Told told, Cast cast, Story story, LocalDate day, long version, PromiseTerms to) {
        StoryClock.at(
                story.at(day, AT_HALF_PAST_TEN),
                () -> access.as(cast.visitor(told.row().text("project_manager")), () -> {
                    editing.change(told.id(), version, to);
                    return told;
                }));
    }

    private static PromiseTerms terms(SeedRow row, @Nullable LocalDate begins) {
        return new PromiseTerms(
                figure(row, "rate"),
                figure(row, "rate_grows"),
                row.whole("years"),
                row.whole("settled"),
                figure(row, "fades"),
                USUAL_FADING,
                figure(row, "free"),
                row.text("weather").equals("carried"),
                row.yes("surplus"),
                begins);
    }

    private static double figure(SeedRow row, String column) {
        return row.figure(column).doubleValue();
    }
}
