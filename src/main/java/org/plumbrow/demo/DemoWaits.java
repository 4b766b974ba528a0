package org.plumbrow.demo;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.database.Ids;
import org.plumbrow.demo.DemoCast.Cast;
import org.plumbrow.demo.DemoProjects.Told;
import org.plumbrow.permit.Awaited;
import org.plumbrow.permit.AwaitedBook;
import org.plumbrow.permit.AwaitedKind;
import org.plumbrow.permit.OwedBy;
import org.plumbrow.permit.WaitResult;
import org.plumbrow.web.Access;
import org.springframework.stereotype.Component;

/** What the projects wait for on the day of the first start, and what came before. */
@Component
@WithDemo
class DemoWaits {

    private static final LocalTime AT_EIGHT = LocalTime.of(8, 0);

    private final AwaitedBook book;
    private final Access access;
    private final List<SeedRow> rows;

    DemoWaits(AwaitedBook book, Access access) {
        this.book = book;
        this.access = access;
        this.rows = SeedRow.of("waits.csv");
    }

    void begin(Told told, Cast cast, Story story) {
        rows.stream()
                .filter(row -> row.text("key").equals(told.key()))
                .forEach(row -> StoryClock.at(
                        story.at(story.daysAgo(1), AT_EIGHT),
                        () -> access.as(
                                cast.visitor(told.row().text("project_manager")),
                                () -> must(told, awaited(row, told.id(), story)))));
    }

    private Told must(Told told, Awaited awaited) {
        book.add(awaited).ifPresent(no -> {
            throw new IllegalStateException("wait of " + told.key() + ": " + no.sentence());
        });
        return told;
    }

    private static Awaited awaited(SeedRow row, UUID projectId, Story story) {
        return new Awaited(
                Ids.next(),
                -1,
                projectId,
                AwaitedKind.valueOf(row.text("kind")),
                "",
                row.text("about"),
                OwedBy.valueOf(row.text("owed_by")),
                null,
                null,
                row.text("name"),
                row.maybe("sent_days_ago").map(story::daysAgo).orElse(null),
                ahead(row.maybe("promised_in_days"), story),
                ahead(row.maybe("due_in_days"), story),
                ahead(row.maybe("expires_in_days"), story),
                row.maybe("came_days_ago").map(story::daysAgo).orElse(null),
                row.has("result") ? WaitResult.valueOf(row.text("result")) : null,
                null,
                row.text("note"));
    }

    private static @Nullable LocalDate ahead(Optional<Integer> days, Story story) {
        return days.map(story::inDays).orElse(null);
    }
}
