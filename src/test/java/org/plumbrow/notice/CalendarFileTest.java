package org.plumbrow.notice;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What we write, another library reads back. */
class CalendarFileTest {

    private static final UUID RACKING = UUID.fromString("0197a000-0000-7000-8000-000000000001");
    private static final Instant PUBLISHED = Instant.parse("2027-03-01T11:40:00Z");

    @Test
    void anotherLibraryReadsBackWhatWasWritten() {
        VEvent read = read(entry("Racking, QV-2027-014", "4 Sedge Hollow Road, Quillback", "Post driver\nTelehandler"));
        assertThat(read.getUid().getValue()).isEqualTo(RACKING + "@plumbrow");
        assertThat(read.getSequence().getValue()).isEqualTo(7);
        assertThat(read.getSummary().getValue()).isEqualTo("Racking, QV-2027-014");
        assertThat(read.getLocation().getValue()).isEqualTo("4 Sedge Hollow Road, Quillback");
        assertThat(read.getDescription().getValue().replace("\r\n", "\n")).isEqualTo("Post driver\nTelehandler");
        assertThat(read.getDateStart().getValue().toInstant()).isEqualTo(Instant.parse("2027-03-08T12:00:00Z"));
        assertThat(read.getDateEnd().getValue().toInstant()).isEqualTo(Instant.parse("2027-03-08T22:00:00Z"));
        assertThat(read.getDateTimeStamp().getValue().toInstant()).isEqualTo(PUBLISHED);
    }

    @Test
    void whatHasAMeaningInTheFormatComesBackAsItWas() {
        String awkward = "a\\b; c, d: \"e\" – ü, 屋根";
        assertThat(read(entry(awkward, "", "")).getSummary().getValue()).isEqualTo(awkward);
    }

    @Test
    void noLineIsLongerThan75OctetsAndNoLetterIsCut() {
        String long300 = "Größe €".repeat(43);
        byte[] file = CalendarFile.of("Crew 1", List.of(entry(long300, "", "")));
        String text = new String(file, StandardCharsets.UTF_8);
        assertThat(text).doesNotContain("\uFFFD").endsWith("END:VCALENDAR\r\n");
        assertThat(Arrays.stream(text.split("\r\n")))
                .allSatisfy(line ->
                        assertThat(line.getBytes(StandardCharsets.UTF_8)).hasSizeLessThanOrEqualTo(75));
        assertThat(text.replace("\r\n", "")).doesNotContain("\n");
        assertThat(read(entry(long300, "", "")).getSummary().getValue()).isEqualTo(long300);
    }

    @Test
    void anEmptyCalendarIsACalendar() {
        ICalendar calendar = Biweekly.parse(new String(CalendarFile.of("Crew 1", List.of()), StandardCharsets.UTF_8))
                .first();
        assertThat(calendar.getEvents()).isEmpty();
        assertThat(calendar.validate(biweekly.ICalVersion.V2_0).toString()).doesNotContain("VERSION");
    }

    private static VEvent read(CalendarFile.Entry entry) {
        byte[] file = CalendarFile.of("Crew 1, Quillback Valley", List.of(entry));
        ICalendar calendar =
                Biweekly.parse(new String(file, StandardCharsets.UTF_8)).first();
        assertThat(calendar.validate(biweekly.ICalVersion.V2_0).isEmpty())
                .as(calendar.validate(biweekly.ICalVersion.V2_0).toString())
                .isTrue();
        return calendar.getEvents().get(0);
    }

    private static CalendarFile.Entry entry(String title, String place, String notes) {
        return new CalendarFile.Entry(
                RACKING,
                7,
                PUBLISHED,
                Instant.parse("2027-03-08T12:00:00Z"),
                Instant.parse("2027-03-08T22:00:00Z"),
                title,
                place,
                notes,
                false);
    }

    @Test
    void whatDoesNotTakePlaceAfterAllStaysAndSaysSo() {
        CalendarFile.Entry held = entry("Power off", "", "");
        assertThat(read(held).getStatus()).isNull();
        VEvent gone = read(new CalendarFile.Entry(
                held.uid(), 8, PUBLISHED, held.start(), held.end(), held.title(), held.place(), held.notes(), true));
        assertThat(gone.getStatus().isCancelled()).isTrue();
        assertThat(gone.getUid().getValue()).isEqualTo(RACKING + "@plumbrow");
    }
}
