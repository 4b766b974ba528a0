package org.plumbrow.notice;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.UUID;

/**
 * Writes a calendar as RFC 5545 wants it: CRLF, lines folded at 75 octets, text escaped, times in UTC (section 3.3.5,
 * form 2), so that no time-zone rules have to travel along.
 */
public final class CalendarFile {

    private static final DateTimeFormatter UTC = DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'");
    private static final int OCTETS_A_LINE = 75;

    private final StringBuilder text = new StringBuilder();

    private CalendarFile() {}

    /**
     * Something that takes place at one stretch.
     *
     * @param uid the same as long as it is the same thing, whatever its date
     * @param sequence grows with each change
     * @param cancelled it does not take place after all; the entry stays, so that the calendar learns of it
     */
    public record Entry(
            UUID uid,
            long sequence,
            Instant changed,
            Instant start,
            Instant end,
            String title,
            String place,
            String notes,
            boolean cancelled) {}

    /** @param name of the calendar, as a phone lists it */
    public static byte[] of(String name, List<Entry> entries) {
        CalendarFile file = new CalendarFile();
        file.line("BEGIN:VCALENDAR");
        file.line("VERSION:2.0");
        file.line("PRODID:-//Plumbrow//Calendar//EN");
        file.line("METHOD:PUBLISH");
        file.text("X-WR-CALNAME", name);
        file.line("REFRESH-INTERVAL;VALUE=DURATION:PT1H");
        entries.forEach(file::event);
        file.line("END:VCALENDAR");
        return file.text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private void event(Entry entry) {
        line("BEGIN:VEVENT");
        line("UID:" + entry.uid + "@plumbrow");
        line("SEQUENCE:" + entry.sequence);
        line("DTSTAMP:" + utc(entry.changed));
        line("LAST-MODIFIED:" + utc(entry.changed));
        line("DTSTART:" + utc(entry.start));
        line("DTEND:" + utc(entry.end));
        text("SUMMARY", entry.title);
        text("LOCATION", entry.place);
        text("DESCRIPTION", entry.notes);
        if (entry.cancelled) {
            line("STATUS:CANCELLED");
        }
        line("END:VEVENT");
    }

    private void text(String property, String value) {
        if (!value.isEmpty()) {
            line(property + ":" + escaped(value));
        }
    }

    private static String escaped(String value) {
        return value.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replace("\r\n", "\\n")
                .replace("\n", "\\n")
                .replace("\r", "\\n");
    }

    private static String utc(Instant instant) {
        return UTC.format(instant.atOffset(ZoneOffset.UTC));
    }

    /** A line longer than 75 octets goes on behind CRLF and a blank; a letter of several octets is never cut. */
    private void line(String content) {
        int octets = 0;
        for (int at = 0; at < content.length(); ) {
            int letter = content.codePointAt(at);
            int size = new String(Character.toChars(letter)).getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > OCTETS_A_LINE) {
                text.append("\r\n ");
                octets = 1;
            }
            text.appendCodePoint(letter);
            octets += size;
            at += Character.charCount(letter);
        }
        text.append("\r\n");
    }
}
