package org.plumbrow.cutover.daylog;

import java.time.Duration;
import java.time.LocalTime;
import java.util.Map;
import java.util.UUID;
import org.plumbrow.TestClock;
import org.plumbrow.TestWorld;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.database.Ids;
import org.plumbrow.evidence.Upload;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.web.Visitor;
import org.springframework.context.annotation.Lazy;
import org.springframework.stereotype.Component;

/** Taps through a day log, four minutes a tap, as far as a test wants. */
@Component
@Lazy // The clock of tests is not in every context.
public class DayTaps {

    private final TestWorld world;
    private final TestClock clock;
    private final Projects projects;
    private final DayLogBook book;
    private final LogSteps steps;
    private final LogHolds holds;
    private final LogReversal reversal;
    private final LogChanges changes;
    private final LogPhotos photos;
    private final LogPeople people;

    DayTaps(
            TestWorld world,
            TestClock clock,
            Projects projects,
            DayLogBook book,
            LogSteps steps,
            LogHolds holds,
            LogReversal reversal,
            LogChanges changes,
            LogPhotos photos,
            LogPeople people) {
        this.world = world;
        this.clock = clock;
        this.projects = projects;
        this.book = book;
        this.steps = steps;
        this.holds = holds;
        this.reversal = reversal;
        this.changes = changes;
        this.photos = photos;
        this.people = people;
    }

    /** Opens the log, sets the latest reversal to be needed by half past noon, and taps up to and with this step. */
    public void upTo(Visitor who, UUID project, String last) {
        world.as(who, () -> {
            ProjectFacts facts = projects.facts(project);
            Service service = facts.site().threePhase() ? Service.WYE_208_120 : Service.SINGLE_PHASE_120_240;
            book.open(project, service, "Tamsin");
            must(reversal.latest(
                    project,
                    new LogReversal.Setting(Ids.next(), LocalTime.of(12, 30), null, null, null, "the freezer")));
        });
        tap(who, project, "1", last);
    }

    /** Taps from this step on, up to and with another. */
    public void tap(Visitor who, UUID project, String first, String last) {
        boolean on = false;
        for (ProcedureTable.Line line : ProcedureTable.LINES) {
            on = on || line.code().equals(first);
            if (on) {
                tap(who, project, line);
            }
            if (line.code().equals(last)) {
                return;
            }
        }
    }

    private void tap(Visitor who, UUID project, ProcedureTable.Line line) {
        clock.pass(Duration.ofMinutes(4));
        world.as(who, () -> {
            ProjectFacts facts = projects.facts(project);
            if (line.isHold()) {
                Hold hold = Hold.valueOf(line.code());
                hold.parts()
                        .forEach(part -> must(holds.sign(
                                project,
                                new LogHolds.Signing(Ids.next(), hold, part, "Sil " + part.words(), "trade", null))));
            } else if (!line.code().equals(Procedure.GENERATOR_BACK)
                    || facts.site().generator()) {
                Service service = facts.site().threePhase() ? Service.WYE_208_120 : Service.SINGLE_PHASE_120_240;
                Readings readings = new Readings(service, facts.site().generator(), false);
                must(steps.done(
                        project,
                        new LogSteps.Work(
                                Ids.next(), line.code(), LogScript.usual(readings, line.code()), Map.of(), null)));
            }
        });
    }

    public void photo(Visitor who, UUID project, String step, byte[] jpeg) {
        world.as(who, () -> must(photos.add(project, Ids.next(), step, new Upload("lugs.jpg", jpeg, ""))));
    }

    public void nearMiss(Visitor who, UUID project, String happened, String couldHave, String done) {
        world.as(who, () -> must(people.nearMiss(project, new LogPeople.Told(Ids.next(), happened, couldHave, done))));
    }

    public void wrong(Visitor who, UUID project, String text) {
        world.as(who, () -> must(changes.wrong(project, Ids.next(), text)));
    }

    public void close(Visitor who, UUID project) {
        world.as(who, () -> {
            if (book.close(project).isPresent()) {
                throw new IllegalStateException("not closed");
            }
        });
    }

    private static void must(LogPen.Said said) {
        if (!said.isStored()) {
            throw new IllegalStateException(said.refusals().toString());
        }
    }
}
