package org.plumbrow.schedule.crewweek;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.duration.ProjectActivity;
import org.plumbrow.calc.duration.WorkPart;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.evidence.EvidenceFacts;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.WrittenDown;
import org.plumbrow.schedule.activity.JobActivities;
import org.plumbrow.web.Entered;

/**
 * All that the page of a daily report shows.
 *
 * @param until last day on which it may be written or changed
 * @param works what may be reported, in the order of the work
 */
record ReportSheet(
        CrewFacts crew,
        ProjectFacts project,
        LocalDate day,
        LocalDate until,
        boolean open,
        Optional<Written> written,
        List<Work> works,
        List<EvidenceFacts> photos) {

    /** The report as it is stored. */
    record Written(UUID id, DailyReport report, String by, WrittenDown when) {}

    /**
     * An activity that may be reported.
     *
     * @param before done by earlier reports, in its unit
     * @param likely planned for that day, or under way
     */
    record Work(JobActivities.Item item, double before, boolean likely) {

        public UUID id() {
            return item.row().id();
        }

        public String key() {
            return item.row().key();
        }

        public String title() {
            return item.row().title();
        }

        ProjectActivity derived() {
            return item.derived();
        }

        public Optional<WorkPart.Counted> counted() {
            return derived().counted();
        }

        /** All of it, as people write it; to the tenth, as a fence or an acre is measured. */
        public String whole() {
            return tenths(counted().map(WorkPart.Counted::amount).orElse(0.0));
        }

        public String reported() {
            return tenths(before);
        }

        private static String tenths(double amount) {
            return Entered.written(Math.rint(amount * 10) / 10);
        }

        /** Done on one day: up to twice what the drawings ask for, as posts are pulled and driven again. */
        Range quantity() {
            double most = 2 * counted().map(WorkPart.Counted::amount).orElse(0.0) - before;
            return new Range(0, Math.max(1, Math.ceil(most)), unit());
        }

        public String limits() {
            return Entered.hint(quantity());
        }

        public String unit() {
            return counted().map(part -> part.rate().unit()).orElse("");
        }
    }

    public List<Work> likely() {
        return works.stream().filter(Work::likely).toList();
    }

    /** "Daily report to write: Sedge Hollow Dairy, Mon, Mar 8". */
    public String heading() {
        return "%s: %s, %s"
                .formatted(
                        written.isPresent() ? "Daily report" : "Daily report to write",
                        project.name(),
                        DayWords.of(day));
    }

    public String address() {
        return "/crews/%s/reports/%s/%s".formatted(crew.id(), project.id(), day);
    }

    long version() {
        return written.map(known -> known.report().version()).orElse(DailyReport.NONE);
    }
}
