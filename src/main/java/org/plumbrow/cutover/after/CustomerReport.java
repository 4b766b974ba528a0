package org.plumbrow.cutover.after;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.daylog.DayStory;
import org.plumbrow.evidence.pdf.PrintedPaper;
import org.plumbrow.project.Duty;
import org.plumbrow.project.ProjectFacts;

/** The report of a closed day for the customer: the same facts in plain words, nothing that only the house says. */
final class CustomerReport {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("h:mm a", Locale.US);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE, MMMM d, yyyy", Locale.US);

    private final DayStory day;

    CustomerReport(DayStory day) {
        this.day = day;
    }

    byte[] pdf() {
        String title = "Your power cut on " + DAY.format(day.window().day());
        PrintedPaper paper = new PrintedPaper(
                UtilityReport.about(day, title, "What happened, for the customer", ReportFor.CUSTOMER));
        paper.line(day.project().name() + ", " + day.project().site().address());
        paper.strong(day.reversedAt() == null ? "Your solar system is connected." : "We could not finish that day.");
        paper.line("Your power was off from %s to %s: %s minutes. We had told you %d minutes, and to plan for %d."
                .formatted(
                        clock(day.offAt()),
                        clock(day.onAt()),
                        day.offMinutes(),
                        day.window().outageMinutes(),
                        day.window().planForMinutes()));
        if (day.reversedAt() != null) {
            paper.line("At %s we chose to put all back as it was. We will call you and find a new day with you."
                    .formatted(clock(day.reversedAt())));
        }
        what(paper);
        volts(paper);
        paper.heading("What comes next");
        if (day.reversedAt() == null) {
            paper.line("Your system stays switched off until the power company says yes. Please do not switch it on.");
        }
        paper.line("Look at what must run: fans, pumps, coolers, freezers. If one does not, call us.");
        paper.line("Do not open or touch electric boxes and wires, even if they look dead. Call us.");
        Optional<ProjectFacts.InCharge> who = day.project().inCharge(Duty.PROJECT_MANAGER);
        who.ifPresent(person -> paper.line("Questions: ask " + person.name() + ", who runs your project."));
        return paper.bytes();
    }

    private void what(PrintedPaper paper) {
        paper.heading("What happened when");
        when(paper, "4", "The power went off.");
        when(paper, "8", "The new wires were in and had been tested.");
        when(paper, "10", "The power company switched the power on again.");
        when(paper, "H5", "You told us that what must run is running.");
    }

    private void when(PrintedPaper paper, String code, String words) {
        day.lines().stream()
                .filter(line -> line.code().equals(code) && line.doneAt() != null)
                .forEach(line -> paper.line(clock(line.doneAt()) + "  " + words));
    }

    private void volts(PrintedPaper paper) {
        List<DayStory.Read> read = day.lines().stream()
                .filter(line -> line.code().equals("10"))
                .flatMap(line -> line.reads().stream())
                .toList();
        if (!read.isEmpty()) {
            paper.heading("What the meter showed when the power came back");
            paper.table(
                    List.of("Between", "Read", "Usual"),
                    new double[] {3, 2, 4},
                    read.stream()
                            .map(one -> List.of(one.words(), one.value(), one.limits()))
                            .toList());
        }
    }

    private String clock(@Nullable Instant at) {
        return at == null ? "–" : CLOCK.format(at.atZone(day.zone()));
    }
}
