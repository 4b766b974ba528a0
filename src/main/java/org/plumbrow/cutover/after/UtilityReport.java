package org.plumbrow.cutover.after;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.cutover.daylog.DayStory;
import org.plumbrow.evidence.pdf.PrintedPaper;

/** The report of a closed day for the utility: times, names, every reading with its limits, photos. */
final class UtilityReport {

    static final String AID = "What was read and signed at these times, as people wrote it down. It does not say that"
            + " equipment may be touched: the qualified person on the spot decides.";
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("h:mm a", Locale.US);
    private static final double[] STEP_SHARES = {9, 3, 3, 3, 9};
    private static final double[] READING_SHARES = {3, 9, 5, 7, 6};

    private final DayStory day;

    UtilityReport(DayStory day) {
        this.day = day;
    }

    /** A photo of the day. */
    record Picture(byte[] bytes, String words) {}

    static PrintedPaper.About about(DayStory day, String title, String subject, ReportFor reading) {
        return new PrintedPaper.About(
                title,
                subject,
                day.personInCharge(),
                Objects.requireNonNull(day.closedAt()),
                day.window().id().getLeastSignificantBits() ^ reading.ordinal());
    }

    static String title(DayStory day) {
        return "%s %s, cutover on %s"
                .formatted(
                        day.project().number(),
                        day.project().name(),
                        DayWords.withYear(day.window().day()));
    }

    byte[] pdf(List<Picture> pictures) {
        PrintedPaper paper =
                new PrintedPaper(about(day, title(day), "Report of the day for the utility", ReportFor.UTILITY));
        head(paper);
        paper.heading("Steps, planned and actual")
                .table(List.of("Step", "Planned", "Actual", "Behind", "Who"), STEP_SHARES, steps());
        paper.heading("Readings with their limits")
                .table(List.of("Step", "Reading", "Value", "Usual values", "Remark"), READING_SHARES, readings());
        if (!day.notes().isEmpty()) {
            paper.heading("What people wrote down as wrong, near misses");
            day.notes()
                    .forEach(note -> paper.line(
                            "%s, %s: %s (%s)".formatted(clock(note.at()), note.step(), note.text(), note.by())));
        }
        if (!pictures.isEmpty()) {
            paper.heading("Photos");
            pictures.forEach(one -> paper.photo(one.bytes, one.words));
        }
        return paper.line(AID).bytes();
    }

    private void head(PrintedPaper paper) {
        paper.strong(ending());
        String number = day.window().utilityConfirmation();
        paper.line("Utility’s number for the appointment: " + (number == null ? "none" : number));
        paper.line("Site: " + day.project().site().address() + "; meter "
                + String.join(", ", day.project().site().meterNumbers()));
        paper.line("Person in charge: " + day.personInCharge());
        paper.line("On site: " + String.join("; ", day.people()));
        paper.line("Planned: off at %s, %d minutes."
                .formatted(CLOCK.format(day.window().start()), day.window().outageMinutes()));
        paper.line("Actual: off at %s, on at %s, %s minutes without power."
                .formatted(clock(day.offAt()), clock(day.onAt()), day.offMinutes()));
        DayStory.Latest latest = day.latest();
        if (latest != null) {
            paper.line("Latest minute to reverse: %s; power needed by %s (%s)."
                    .formatted(clock(latest.decideBy()), clock(latest.neededBy()), latest.why()));
        }
    }

    private String ending() {
        return day.reversedAt() == null
                ? "Done; the log is closed."
                : "Reversed at %s: everything was put back as it was. %s"
                        .formatted(clock(day.reversedAt()), day.reversedBecause());
    }

    private List<List<String>> steps() {
        return day.lines().stream()
                .map(line -> line.whyNot() != null
                        ? List.of(line.title() + ", " + line.words(), "", "", "", "does not apply: " + line.whyNot())
                        : List.of(
                                line.title() + ", " + line.words(),
                                clock(line.plannedAt()),
                                line.doneAt() == null ? "not done" : clock(line.doneAt()),
                                line.behind(day.now()) > 0 ? line.behind(day.now()) + " min" : "–",
                                line.by()))
                .toList();
    }

    private List<List<String>> readings() {
        List<List<String>> rows = new ArrayList<>();
        for (DayStory.Line line : day.lines()) {
            line.reads()
                    .forEach(read ->
                            rows.add(List.of(line.code(), read.words(), read.value(), read.limits(), remark(read))));
        }
        return rows;
    }

    private static String remark(DayStory.Read read) {
        return String.join(
                "; ",
                Stream.of(
                                read.outside() ? "outside its limits" : "",
                                read.stays().isEmpty() ? "" : "stays: " + read.stays(),
                                read.corrected() ? "corrected" : "")
                        .filter(word -> !word.isEmpty())
                        .toList());
    }

    private String clock(@Nullable Instant at) {
        return at == null ? "–" : CLOCK.format(at.atZone(day.zone()));
    }
}
