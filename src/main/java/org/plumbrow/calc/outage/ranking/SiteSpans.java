package org.plumbrow.calc.outage.ranking;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.plumbrow.calc.calendar.ClockWords;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.calendar.WorkingCalendar;
import org.plumbrow.calc.outage.Blackout;
import org.plumbrow.calc.outage.CrewOffer;
import org.plumbrow.calc.outage.ranking.Spans.Span;

/** Days, weeks and calendars laid out on the minutes of the site's clock, two days beyond what is looked at. */
record SiteSpans(SiteClock clock, LocalDate first, LocalDate last) {

    private static final int NOON = 720;

    static SiteSpans of(HourQuestion question) {
        LocalDate first = question.from().toLocalDate().minusDays(2);
        return new SiteSpans(
                new SiteClock(first), first, question.through().toLocalDate().plusDays(2));
    }

    Stream<LocalDate> days() {
        return first.datesUntil(last.plusDays(1));
    }

    Spans closed(WorkingCalendar calendar) {
        List<Span> spans = new ArrayList<>();
        days().forEach(day -> calendar.whyClosed(day)
                .ifPresent(why -> spans.add(new Span(clock.startOf(day), clock.startOf(day) + SiteClock.DAY, why))));
        return Spans.of(spans);
    }

    Spans blackouts(List<Blackout> blackouts) {
        List<Span> spans = new ArrayList<>();
        days().forEach(day -> blackouts.stream()
                .filter(one -> one.concerns(day))
                .forEach(one -> spans.add(new Span(clock.at(day, one.from()), clock.at(day, one.to()), one.reason()))));
        return Spans.of(spans);
    }

    Spans daily(List<Daily> daily) {
        List<Span> spans = new ArrayList<>();
        days().forEach(day -> daily.forEach(one -> spans.add(new Span(
                clock.at(day, one.from()),
                clock.at(day, one.to()),
                one.words() + " at " + ClockWords.of(one.from())))));
        return Spans.of(spans);
    }

    Spans events(List<AnimalDays.FlockEvent> events) {
        return Spans.of(events.stream()
                .map(event -> new Span(clock.at(event.at()), clock.at(event.at()), event.words()))
                .toList());
    }

    Spans busy(CrewOffer offer) {
        return Spans.of(offer.busy().stream()
                .map(busy -> new Span(startOf(busy.from()), startOf(busy.to()) + NOON, busy.what()))
                .toList());
    }

    private int startOf(HalfDay half) {
        return clock.startOf(half.date()) + (half.half() == Half.AFTERNOON ? NOON : 0);
    }
}
