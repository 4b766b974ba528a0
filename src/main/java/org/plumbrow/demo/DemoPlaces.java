package org.plumbrow.demo;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.demo.DemoCast.Cast;
import org.plumbrow.demo.DemoProjects.Told;
import org.plumbrow.estimate.place.Placement;
import org.plumbrow.estimate.place.Placements;
import org.plumbrow.project.Stage;
import org.plumbrow.web.Access;
import org.springframework.stereotype.Component;

/** Roof or ground: what some customers decided with their project manager, and what one has still to think about. */
@Component
@WithDemo
class DemoPlaces implements DemoChapter {

    private static final LocalTime AT_SEVEN = LocalTime.of(7, 0);
    private static final int DAYS_AFTER_THE_TALK = 7;

    private final Placements placements;
    private final Access access;
    private final List<SeedRow> rows;

    DemoPlaces(Placements placements, Access access) {
        this.placements = placements;
        this.access = access;
        this.rows = SeedRow.of("placements.csv");
    }

    /** Written down with the design, some days after the talk. */
    @Override
    public void before(Stage stage, Told told, Cast cast, Story story, LocalDate passed) {
        if (stage == Stage.DESIGNED) {
            write(told, cast, story, passed, passed.minusDays(DAYS_AFTER_THE_TALK));
        }
    }

    /** Of a project that nobody designs yet. */
    void begin(Told told, Cast cast, Story story) {
        if (!told.row().has("designed_days_ago")) {
            write(told, cast, story, story.daysAgo(1), null);
        }
    }

    private void write(Told told, Cast cast, Story story, LocalDate day, @Nullable LocalDate decidedOn) {
        rows.stream()
                .filter(row -> row.text("key").equals(told.key()))
                .forEach(row -> StoryClock.at(
                        story.at(day, AT_SEVEN),
                        () -> access.as(
                                cast.visitor(told.row().text("project_manager")),
                                () -> must(told, placement(row, decidedOn)))));
    }

    private static Placement placement(SeedRow row, @Nullable LocalDate decidedOn) {
        return new Placement(
                -1,
                Placement.Choice.valueOf(row.text("choice")),
                row.text("decided_by"),
                row.text("decided_with"),
                decidedOn,
                row.text("reason"));
    }

    private Told must(Told told, Placement placement) {
        placements.decide(told.id(), placement).ifPresent(no -> {
            throw new IllegalStateException("placement: " + no.sentence());
        });
        return told;
    }
}
