package org.plumbrow.cutover.daylog;

import static java.util.Map.entry;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.PhoneDoor;
import org.plumbrow.project.PhoneReply;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.ExtendedModelMap;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.HandlerMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.springframework.web.servlet.mvc.support.RedirectAttributesModelMap;

/**
 * Where a phone sends what it has kept of a day log: each form's own fields, read by that form's own door. A new form of
 * the log is a line in {@link #table}, and its address at {@link #take}.
 */
@Controller
class LogSendingController extends PhoneDoor {

    private static final int MOST_FIXES = 200;
    private static final String LOG = "/projects/{projectId}/day-log";
    private static final String OPEN = LOG + "/sending";
    private static final String DONE = LOG + "/steps/{logStep}/done/sending";
    private static final String READINGS = LOG + "/steps/{logStep}/readings/sending";
    private static final String PHOTO = LOG + "/steps/{logStep}/photo/sending";
    private static final String SIGN = LOG + "/holds/{logHold}/sign/sending";
    private static final String CORRECT = LOG + "/entries/{entryId}/sending";
    private static final String TAKE_BACK = LOG + "/entries/{entryId}/take-back/sending";
    private static final String PEOPLE = LOG + "/people/sending";
    private static final String LEFT = LOG + "/people/{entryId}/left/sending";
    private static final String NEAR_MISS = LOG + "/near-miss/sending";
    private static final String WRONG = LOG + "/wrong/sending";
    private static final String REVERSAL_TIME = LOG + "/reversal-time/sending";
    private static final String REVERSE = LOG + "/reverse/sending";
    private static final String MISTAKE = LOG + "/reverse-mistake/sending";
    private static final String REASON = LOG + "/reverse-reason/sending";
    private static final String POWER_ON = LOG + "/power-on/sending";
    private static final String CLOSE = LOG + "/close/sending";

    private final LogSending sending;
    private final DayLogController log;
    private final Clock clock;
    private final Map<String, Form> forms;

    LogSendingController(
            LogSending sending,
            DayLogController log,
            DayLogChangesController changes,
            LogEntryController entries,
            LogPeopleController people,
            Clock clock) {
        super("day log");
        this.sending = sending;
        this.log = log;
        this.clock = clock;
        this.forms = table(log, changes, entries, people);
    }

    /** One of the forms of the day log, as it is sent with signal: where its answer leads. */
    private interface Form {
        String send(UUID projectId, Sent sent);
    }

    /** What came with it. */
    private record Sent(
            Map<String, String> where,
            Map<String, String> all,
            @Nullable MultipartFile photo,
            Model model,
            HttpServletResponse answer,
            RedirectAttributes next) {

        String of(String name) {
            return Objects.requireNonNull(where.get(name));
        }

        String typed(String field) {
            return all.getOrDefault(field, "");
        }

        UUID entry() {
            try {
                return UUID.fromString(of("entryId"));
            } catch (IllegalArgumentException notAnId) {
                throw new NotFound("entry " + of("entryId"));
            }
        }

        long version() {
            String seen = typed("version");
            return seen.matches("\\d{1,9}") ? Long.parseLong(seen) : -1;
        }
    }

    private static Map<String, Form> table(
            DayLogController log,
            DayLogChangesController changes,
            LogEntryController entries,
            LogPeopleController people) {
        return Map.ofEntries(
                entry(
                        OPEN,
                        (id, s) -> log.open(
                                id, s.typed("service"), s.typed("personInCharge"), s.model(), s.answer(), s.next())),
                entry(DONE, (id, s) -> log.done(id, s.of("logStep"), s.all(), s.model(), s.answer(), s.next())),
                entry(READINGS, (id, s) -> log.readings(id, s.of("logStep"), s.all(), s.model(), s.answer(), s.next())),
                entry(
                        PHOTO,
                        (id, s) -> changes.photo(
                                id, s.of("logStep"), s.all(), s.photo(), s.model(), s.answer(), s.next())),
                entry(SIGN, (id, s) -> log.sign(id, s.of("logHold"), s.all(), s.model(), s.answer(), s.next())),
                entry(
                        CORRECT,
                        (id, s) ->
                                entries.correct(id, s.entry(), s.version(), s.all(), s.model(), s.answer(), s.next())),
                entry(TAKE_BACK, (id, s) -> entries.takeBack(id, s.entry(), s.all(), s.model(), s.answer(), s.next())),
                entry(PEOPLE, (id, s) -> people.arrives(id, s.all(), s.model(), s.answer(), s.next())),
                entry(LEFT, (id, s) -> people.leaves(id, s.entry(), s.all(), s.model(), s.answer(), s.next())),
                entry(NEAR_MISS, (id, s) -> people.nearMiss(id, s.all(), s.model(), s.answer(), s.next())),
                entry(WRONG, (id, s) -> changes.wrong(id, s.all(), s.model(), s.answer(), s.next())),
                entry(
                        REVERSAL_TIME,
                        (id, s) -> changes.reversalTime(id, s.version(), s.all(), s.model(), s.answer(), s.next())),
                entry(REVERSE, (id, s) -> changes.reverse(id, s.all(), s.model(), s.answer(), s.next())),
                entry(MISTAKE, (id, s) -> changes.reverseMistake(id, s.all(), s.model(), s.answer(), s.next())),
                entry(REASON, (id, s) -> changes.reverseReason(id, s.all(), s.model(), s.answer(), s.next())),
                entry(POWER_ON, (id, s) -> changes.powerOn(id, s.all(), s.model(), s.answer(), s.next())),
                entry(CLOSE, (id, s) -> log.close(id, s.model(), s.answer(), s.next())));
    }

    @PostMapping({
        OPEN,
        DONE,
        READINGS,
        PHOTO,
        SIGN,
        CORRECT,
        TAKE_BACK,
        PEOPLE,
        LEFT,
        NEAR_MISS,
        WRONG,
        REVERSAL_TIME,
        REVERSE,
        MISTAKE,
        REASON,
        POWER_ON,
        CLOSE
    })
    ResponseEntity<PhoneReply> take(
            @PathVariable UUID projectId,
            @PathVariable Map<String, String> where,
            @RequestParam Map<String, String> all,
            @RequestParam(required = false) @Nullable MultipartFile photo,
            HttpServletRequest request,
            HttpServletResponse answer) {
        Form form =
                Objects.requireNonNull(forms.get(request.getAttribute(HandlerMapping.BEST_MATCHING_PATTERN_ATTRIBUTE)));
        Sent sent = new Sent(where, all, photo, new ExtendedModelMap(), answer, new RedirectAttributesModelMap());
        PhoneTap tap = tap(all);
        return sending.take(
                        of(all),
                        projectId,
                        what(request),
                        sent.version(),
                        tap,
                        () -> against(form.send(projectId, sent), sent),
                        () -> tap.fixes().isEmpty() ? List.of() : log.putRight(projectId, sent.of("logStep"), all))
                .leadingTo("/projects/" + projectId + "/day-log");
    }

    /** The last words of the form's address. */
    private static String what(HttpServletRequest request) {
        String last = request.getRequestURI().replaceAll(".*/day-log/|/?sending$", "");
        return last.isEmpty() ? "open" : last;
    }

    /** What the form's own answer says against it: nothing when it leads on. */
    private static List<Refusal> against(String view, Sent sent) {
        return view.startsWith("redirect:") ? List.of() : LogPages.problems(sent.model());
    }

    private PhoneTap tap(Map<String, String> all) {
        return new PhoneTap(
                instant(all.getOrDefault("written", "")), instant(all.getOrDefault("sent", "")), fixes(all));
    }

    /** "fix.1.of" names the quantity that was put right first. */
    private List<PhoneTap.Fix> fixes(Map<String, String> all) {
        return IntStream.rangeClosed(1, MOST_FIXES)
                .mapToObj(i -> "fix." + i + ".")
                .takeWhile(fix -> all.containsKey(fix + "of"))
                .map(fix -> new PhoneTap.Fix(
                        LogPages.entry(Map.of("entry", all.getOrDefault(fix + "id", ""))),
                        instant(all.getOrDefault(fix + "at", "")),
                        all.getOrDefault(fix + "of", ""),
                        all.getOrDefault(fix + "was", ""),
                        all.getOrDefault(fix + "why", "")))
                .toList();
    }

    private Instant instant(String said) {
        try {
            return Instant.parse(said);
        } catch (DateTimeException notSaid) {
            return clock.instant();
        }
    }
}
