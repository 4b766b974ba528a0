package org.plumbrow.cutover.daylog;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.cutover.daylog.DayStory.How;
import org.plumbrow.cutover.daylog.LogState.Effective;
import org.plumbrow.project.ProjectFacts;

/** Puts a story together from a log: what counts, nothing of what was taken back. */
final class StoryTelling {

    private final Day day;
    private final DayLog log;
    private final LogState state;
    private final Readings readings;
    private final PlannedTimes planned;

    StoryTelling(Day day, DayLog log, LogState state) {
        this.day = day;
        this.log = log;
        this.state = state;
        this.readings = LogPen.readings(log, day.project);
        this.planned = new PlannedTimes(state.steps(), day.window, day.zone);
    }

    /** Which day of which project, told when. */
    record Day(ProjectFacts project, OutageFacts window, ZoneId zone, Instant now) {}

    static DayStory unopened(Day day) {
        boolean givenUp = !day.window.isLive() && day.window.actualMinutes().isEmpty();
        return new DayStory(
                day.project,
                day.window,
                day.zone,
                day.now,
                givenUp ? How.GIVEN_UP : How.NOT_OPENED,
                "",
                List.of(),
                null,
                null,
                List.of(),
                List.of(),
                List.of(),
                null,
                "",
                null);
    }

    DayStory story() {
        How how = how();
        Optional<LogStep> here = how == How.RUNNING ? state.current() : Optional.empty();
        return new DayStory(
                day.project,
                day.window,
                day.zone,
                day.now,
                how,
                log.personInCharge(),
                state.steps().stream()
                        .map(step -> line(step, here.filter(step::equals).isPresent()))
                        .toList(),
                latest(),
                lastWord(),
                notes(),
                people(),
                photos(),
                state.reversedAt().orElse(null),
                state.reverseReason().orElse(""),
                log.closedAt());
    }

    private How how() {
        if (log.outcome() != null) {
            return log.outcome() == DayLog.Outcome.DONE ? How.CLOSED_DONE : How.CLOSED_REVERSED;
        }
        if (LogPen.isGivenUp(log, state, day.window)) {
            return How.GIVEN_UP;
        }
        if (state.reversedAt().isPresent()) {
            return state.powerOnAt().isPresent() ? How.REVERSED : How.REVERSING;
        }
        return state.current().isPresent() ? How.RUNNING : How.COMPLETE;
    }

    private DayStory.Line line(LogStep step, boolean here) {
        Optional<Instant> at = step.hold() ? state.signedAt(Hold.valueOf(step.code())) : state.doneAt(step.code());
        return new DayStory.Line(
                step.code(),
                step.title(),
                step.words(),
                step.who(),
                step.hold(),
                step.typicalMinutes(),
                planned.of(step),
                at.orElse(null),
                by(step),
                step.whyNot(),
                here,
                reads(step));
    }

    private String by(LogStep step) {
        Stream<String> names = step.hold()
                ? state.signatures(Hold.valueOf(step.code())).stream().map(StoryTelling::signed)
                : state.of(step.code(), EntryKind.DONE).stream().map(StoryTelling::who);
        return names.distinct().collect(Collectors.joining("; "));
    }

    private static String signed(Effective one) {
        LogEntry.Signature signature = Objects.requireNonNull(one.entry().signature());
        return signature.name() + ", " + signature.trade();
    }

    private static String who(Effective one) {
        String value = one.value();
        return value == null || value.isEmpty() ? one.entry().byName() : value;
    }

    private List<DayStory.Read> reads(LogStep step) {
        return readings.of(step.code()).stream()
                .flatMap(asked -> state.reading(step.code(), asked.quantity()).map(one -> read(asked, one)).stream())
                .toList();
    }

    private DayStory.Read read(Asked asked, Effective one) {
        String value = String.valueOf(one.value());
        return new DayStory.Read(
                asked.words(),
                asked.shown(value),
                asked.hint(),
                asked.ask(value).isPresent(),
                state.whyItStays(one.entry().id()).orElse(""),
                !Objects.equals(one.value(), one.entry().value()));
    }

    private DayStory.@Nullable Latest latest() {
        return state.reversal()
                .map(time -> new DayStory.Latest(
                        time.latest().decideBy().atZone(day.zone).toInstant(),
                        time.latest().neededBy().atZone(day.zone).toInstant(),
                        time.why()))
                .orElse(null);
    }

    private DayStory.@Nullable Word lastWord() {
        return state.steps().stream()
                .flatMap(step -> state.entriesOf(step.code()).stream())
                .max(Comparator.comparing(LogEntry::storedAt).thenComparing(LogEntry::number))
                .map(this::word)
                .orElse(null);
    }

    private DayStory.Word word(LogEntry entry) {
        LogEntry.PhoneTime phone = entry.phone();
        return new DayStory.Word(
                state.step(entry.step()).title(),
                entry.byName(),
                entry.storedAt(),
                entry.happenedAt(),
                phone == null ? null : phone.time(),
                phone == null ? 0 : phone.minutesWrong());
    }

    private List<DayStory.Note> notes() {
        Stream<DayStory.Note> wrong = state.of(EntryKind.WRONG).stream()
                .map(one -> new DayStory.Note(
                        state.step(one.entry().step()).title(),
                        String.valueOf(one.value()),
                        one.at(),
                        one.entry().byName()));
        return Stream.concat(wrong, NearMiss.of(state).stream().map(this::note))
                .sorted(Comparator.comparing(DayStory.Note::at))
                .toList();
    }

    private DayStory.Note note(NearMiss miss) {
        String text = "near miss: %s Could have: %s Done: %s".formatted(miss.happened(), miss.couldHave(), miss.done());
        return new DayStory.Note(state.step(miss.step()).title(), text, miss.at(), miss.by());
    }

    private List<String> people() {
        return PeopleOnSite.of(log, state).all().stream()
                .map(person -> person.name() + ", " + person.role())
                .distinct()
                .toList();
    }

    private List<UUID> photos() {
        return state.of(EntryKind.PHOTO).stream()
                .map(one -> one.entry().evidenceId())
                .filter(Objects::nonNull)
                .toList();
    }
}
