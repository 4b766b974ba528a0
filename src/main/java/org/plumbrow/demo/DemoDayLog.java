package org.plumbrow.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.cutover.daylog.DayLogBook;
import org.plumbrow.cutover.daylog.Hold;
import org.plumbrow.cutover.daylog.LogHolds;
import org.plumbrow.cutover.daylog.LogPen;
import org.plumbrow.cutover.daylog.LogReversal;
import org.plumbrow.cutover.daylog.LogSteps;
import org.plumbrow.database.Ids;
import org.plumbrow.demo.DemoCast.Cast;
import org.plumbrow.demo.DemoProjects.Told;
import org.plumbrow.web.Access;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Component;

/** Writes the day log of an outage minute by minute, as the project manager would on the phone: each reading stands in the file. */
@Component
@WithDemo
class DemoDayLog {

    private static final int CLOSED_AFTER_S = 600;

    private final DayLogBook book;
    private final LogSteps steps;
    private final LogHolds holds;
    private final LogReversal reversal;
    private final Access access;

    DemoDayLog(DayLogBook book, LogSteps steps, LogHolds holds, LogReversal reversal, Access access) {
        this.book = book;
        this.steps = steps;
        this.holds = holds;
        this.reversal = reversal;
        this.access = access;
    }

    void tell(Told told, SeedRow outage, Cast cast, Story story, LocalDate day) {
        new Telling(told, outage, cast, story.at(day, LocalTime.parse(outage.text("arrival")))).tell();
    }

    /** One log. */
    private final class Telling {
        private final UUID project;
        private final SeedRow outage;
        private final Cast cast;
        private final Instant arrival;
        private final String manager;
        private final String customer;

        Telling(Told told, SeedRow outage, Cast cast, Instant arrival) {
            this.project = told.id();
            this.outage = outage;
            this.cast = cast;
            this.arrival = arrival;
            this.manager = told.row().text("project_manager");
            this.customer = told.row().text("contact");
        }

        void tell() {
            refused(at(arrival, () -> book.open(project, Service.valueOf(outage.text("service")), manager)));
            LogReversal.Setting latest = new LogReversal.Setting(
                    Ids.next(), LocalTime.parse(outage.text("needed_by")), null, null, null, outage.text("needed_why"));
            must(at(arrival, () -> reversal.latest(project, latest)));
            Instant last = arrival;
            for (SeedRow row : SeedRow.of("cutover-logs/" + outage.text("log"))) {
                last = arrival.plusSeconds(60L * row.whole("end_min"));
                line(row, last);
            }
            refused(at(last.plusSeconds(CLOSED_AFTER_S), () -> book.close(project)));
        }

        private void line(SeedRow row, Instant when) {
            String step = row.text("step");
            if (step.startsWith("H")) {
                sign(row, Hold.valueOf(step), when);
            } else {
                String who = name(row.text("who")) + ", " + row.text("trade");
                LogSteps.Work work = new LogSteps.Work(Ids.next(), step, readings(row), Map.of(), null, Map.of(), who);
                must(at(when, () -> steps.done(project, work)));
            }
        }

        private void sign(SeedRow row, Hold hold, Instant when) {
            List<String> names = row.parts("who", ";");
            List<String> trades = row.parts("trade", ";");
            for (int i = 0; i < hold.parts().size(); i++) {
                LogHolds.Signing signing = new LogHolds.Signing(
                        Ids.next(), hold, hold.parts().get(i), name(names.get(i)), trades.get(i), null);
                must(at(when, () -> holds.sign(project, signing)));
            }
        }

        /** In every log the same parts are played by the people of that job. */
        private String name(String who) {
            return switch (who) {
                case "manager" -> manager;
                case "customer" -> customer;
                default -> who;
            };
        }

        private <T> T at(Instant when, Supplier<T> work) {
            return StoryClock.at(when, () -> access.as(cast.visitor(manager), work));
        }

        private void refused(Optional<Refusal> no) {
            no.ifPresent(refusal -> {
                throw new IllegalStateException(outage.text("key") + ", day log: " + refusal.sentence());
            });
        }

        private void must(LogPen.Said said) {
            said.refusals().stream().findFirst().ifPresent(refusal -> refused(Optional.of(refusal)));
        }
    }

    /** {@code A-N=121.4; B-N=120.9}: quantity and value. */
    private static Map<String, String> readings(SeedRow row) {
        Map<String, String> readings = new LinkedHashMap<>();
        for (String part : row.parts("readings", ";")) {
            int equals = part.indexOf('=');
            readings.put(part.substring(0, equals), part.substring(equals + 1));
        }
        return readings;
    }
}
