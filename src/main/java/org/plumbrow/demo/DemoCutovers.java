package org.plumbrow.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.plumbrow.cutover.OutageChoice;
import org.plumbrow.cutover.OutageHistory;
import org.plumbrow.cutover.daylog.LogDictation;
import org.plumbrow.demo.DemoCast.Cast;
import org.plumbrow.demo.DemoProjects.Told;
import org.plumbrow.project.Stage;
import org.plumbrow.web.Access;
import org.springframework.stereotype.Component;

/** Outages that took place, minute by minute, and those that are agreed for the coming weeks. */
@Component
@WithDemo
class DemoCutovers implements DemoChapter {

    private static final LocalTime ARRIVAL = LocalTime.of(7, 30);

    private final OutageHistory history;
    private final LogDictation log;
    private final Access access;

    DemoCutovers(OutageHistory history, LogDictation log, Access access) {
        this.history = history;
        this.log = log;
        this.access = access;
    }

    /** The day before the gate was passed. */
    @Override
    public void before(Stage stage, Told told, Cast cast, Story story, LocalDate passed) {
        if (stage == Stage.CUTOVER) {
            LocalDate day = passed;
            agree(told, cast, story, day, story.at(day.minusDays(35), LocalTime.of(10, 0)));
            tell(told, cast, story, day);
        }
    }

    /** A day to come, agreed by now. */
    void agree(Told told, Cast cast, Story story, LocalDate day, Instant agreed) {
        boolean farm = told.row().yes("generator");
        StoryClock.at(
                agreed,
                () -> history.agreed(
                        told.id(),
                        new OutageChoice(
                                day,
                                LocalTime.of(9, 0),
                                farm ? 95 : 75,
                                cast.crews().get("Crew 4"),
                                null,
                                null),
                        agreed,
                        (told.row().text("utility").startsWith("Valley") ? "VE-" : "MP-")
                                + told.row().text("meter_number"),
                        cast.actor(told.row().text("project_manager"))));
    }

    private void tell(Told told, Cast cast, Story story, LocalDate day) {
        Instant arrival = story.at(day, ARRIVAL);
        String manager = told.row().text("project_manager");
        asManager(
                cast,
                arrival,
                () -> log.open(
                        told.id(),
                        manager,
                        LocalTime.of(11, 45),
                        "Power has to be back before the afternoon's work begins."));
        Instant last = arrival;
        for (SeedRow row :
                SeedRow.of(told.row().yes("generator") ? "cutover-logs/gorse.csv" : "cutover-logs/chapel.csv")) {
            last = arrival.plusSeconds(60L * row.whole("end_min"));
            List<String> names =
                    row.parts("who", ";").stream().map(name -> cast(name, told)).toList();
            asManager(cast, last, () -> log.line(told.id(), row.text("step"), names, row.parts("trade", ";")));
        }
        asManager(cast, last.plusSeconds(600), () -> log.close(told.id()));
    }

    /** In every log the same parts are played by the people of that job. */
    private static String cast(String name, Told told) {
        return switch (name) {
            case "Tamsin", "Wim" -> told.row().text("project_manager");
            case "Casimir", "Nora" -> told.row().text("contact");
            default -> name;
        };
    }

    private void asManager(Cast cast, Instant at, Runnable work) {
        StoryClock.at(
                at,
                () -> access.as(cast.manager(), () -> {
                    work.run();
                    return Boolean.TRUE;
                }));
    }
}
