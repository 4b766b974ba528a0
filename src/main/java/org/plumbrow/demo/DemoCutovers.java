package org.plumbrow.demo;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.plumbrow.cutover.OutageChoice;
import org.plumbrow.cutover.OutagePlanning;
import org.plumbrow.cutover.OutageRecords;
import org.plumbrow.demo.DemoCast.Cast;
import org.plumbrow.demo.DemoProjects.Told;
import org.plumbrow.project.Stage;
import org.plumbrow.web.Access;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Component;

/** Outages that took place, and those that are agreed for the coming weeks: booked and told as on the pages. */
@Component
@WithDemo
class DemoCutovers implements DemoChapter {

    private static final LocalTime AT_TEN = LocalTime.of(10, 0);
    /** So many days beside the wanted one are tried: the utility, a holiday or a crew may not allow that very day. */
    private static final int DAYS_TRIED = 14;

    private final OutagePlanning planning;
    private final OutageRecords records;
    private final DemoDayLog log;
    private final Access access;
    private final Map<String, SeedRow> outages;

    DemoCutovers(OutagePlanning planning, OutageRecords records, DemoDayLog log, Access access) {
        this.planning = planning;
        this.records = records;
        this.log = log;
        this.access = access;
        this.outages = SeedRow.of("outages.csv").stream()
                .collect(Collectors.toMap(row -> row.text("key"), Function.identity()));
    }

    /** Before the gate was passed. */
    @Override
    public void before(Stage stage, Told told, Cast cast, Story story, LocalDate passed) {
        if (stage == Stage.CUTOVER) {
            Agreeing agreeing = new Agreeing(told, cast, story);
            LocalDate day = agreeing.near(passed.minusDays(1), -1);
            log.tell(told, agreeing.outage, cast, story, day);
        }
    }

    /** A day to come, agreed by now. */
    void agree(Told told, Cast cast, Story story, LocalDate wanted) {
        new Agreeing(told, cast, story).near(wanted, 1);
    }

    /** How one outage came to be agreed. */
    private final class Agreeing {
        private final UUID project;
        private final SeedRow outage;
        private final Cast cast;
        private final Story story;
        private final String manager;

        Agreeing(Told told, Cast cast, Story story) {
            this.project = told.id();
            this.outage = Optional.ofNullable(outages.get(told.key()))
                    .orElseThrow(() -> new IllegalStateException("outages.csv does not tell of " + told.key()));
            this.cast = cast;
            this.story = story;
            this.manager = told.row().text("project_manager");
        }

        /** @param step which way to look when that day is not possible */
        LocalDate near(LocalDate wanted, int step) {
            List<Refusal> against = new ArrayList<>();
            for (int tried = 0; tried < DAYS_TRIED; tried++) {
                LocalDate day = wanted.plusDays((long) step * tried);
                against = on(daysAgo("told_days_ago"), () -> planning.book(project, choice(day)));
                if (against.isEmpty()) {
                    tellAndAnswer();
                    return day;
                }
            }
            throw new IllegalStateException(outage.text("key") + ": no day for the outage. " + against);
        }

        private OutageChoice choice(LocalDate day) {
            return new OutageChoice(
                    day,
                    LocalTime.parse(outage.text("start")),
                    outage.whole("minutes"),
                    cast.crews().get(outage.text("crew")),
                    null,
                    null);
        }

        private void tellAndAnswer() {
            LocalDate told = daysAgo("told_days_ago");
            must(on(told, () -> records.utilityTold(project, told, outage.text("utility_told"))));
            must(on(told, () -> records.customerTold(project, told, outage.text("customer_told"))));
            LocalDate answered = daysAgo("answered_days_ago");
            must(on(answered, () -> records.utilityConfirms(project, outage.text("utility_number"))));
            boolean agrees = outage.text("customer_answer").equals("agrees");
            must(on(answered, () -> records.customerAnswers(project, agrees, "")));
        }

        private LocalDate daysAgo(String column) {
            return story.daysAgo(outage.whole(column));
        }

        /** As the project manager, at ten that day. */
        private <T> T on(LocalDate day, java.util.function.Supplier<T> work) {
            return StoryClock.at(story.at(day, AT_TEN), () -> access.as(cast.visitor(manager), work));
        }

        private void must(Optional<Refusal> no) {
            no.ifPresent(refusal -> {
                throw new IllegalStateException(outage.text("key") + ": " + refusal.sentence());
            });
        }
    }
}
