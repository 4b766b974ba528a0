package org.plumbrow.cutover.daylog;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.plumbrow.cutover.daylog.DayLogReading.Typed;
import org.plumbrow.cutover.daylog.LogPen.Said;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Conflict;
import org.plumbrow.web.Flash;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Shows a page of the day log, and answers a change: back to the log when it was stored, else the page with what was typed. */
@Component
class LogPages {

    static final String BACK = "redirect:/projects/{projectId}/day-log";

    private static final int REFUSED = 422;
    private static final int MEANWHILE = 409;

    private final DayLogReading reading;
    private final Clock clock;

    LogPages(DayLogReading reading, Clock clock) {
        this.reading = reading;
        this.clock = clock;
    }

    /** Where the answer to a change goes. */
    record Reply(String view, Model model, HttpServletResponse response, RedirectAttributes next) {}

    String show(UUID projectId, String view, Typed typed, Model model) {
        return show(reading.sheet(projectId, typed), view, typed, model);
    }

    String show(DayLogSheet sheet, String view, Typed typed, Model model) {
        Map<String, String> wrong = new HashMap<>();
        typed.refusals().forEach(refusal -> wrong.putIfAbsent(refusal.field(), refusal.sentence()));
        model.addAttribute("serverTime", clock.instant());
        model.addAttribute("sheet", sheet);
        model.addAttribute("about", sheet.about());
        model.addAttribute("problems", typed.refusals());
        model.addAttribute("wrong", wrong);
        model.addAttribute("typed", typed.values());
        model.addAttribute("newEntry", Ids.next());
        return "cutover/" + view;
    }

    String answer(UUID projectId, Said said, Map<String, String> typed, Reply reply) {
        return answer(projectId, said, typed, Map.of(), reply);
    }

    String answer(UUID projectId, Said said, Map<String, String> typed, Map<String, String> stays, Reply reply) {
        if (said.isStored()) {
            return stored(said, reply);
        }
        refuse(said, reply);
        return show(projectId, reply.view(), new Typed(typed, stays, said.refusals()), reply.model());
    }

    /** The page's own id of what it sends, so that the same twice is stored once; a new one where it has none. */
    static UUID entry(Map<String, String> all) {
        try {
            return UUID.fromString(all.getOrDefault("entry", ""));
        } catch (IllegalArgumentException notAnId) {
            return Ids.next();
        }
    }

    /** The sheet that was shown. */
    static DayLogSheet sheet(Model model) {
        return (DayLogSheet) Objects.requireNonNull(model.getAttribute("sheet"));
    }

    /** What was refused on the page that was shown. */
    static List<Refusal> problems(Model model) {
        return ((List<?>) Objects.requireNonNull(model.getAttribute("problems")))
                .stream().map(Refusal.class::cast).toList();
    }

    /** A field of theirs beside yours; what you left empty is theirs. */
    static Conflict.Row beside(String label, String field, Object theirs, Map<String, String> yours) {
        String typed = yours.getOrDefault(field, "").strip();
        return new Conflict.Row(label, field, theirs.toString(), typed.isEmpty() ? theirs.toString() : typed);
    }

    static String stored(Said said, Reply reply) {
        if (!said.sentence().isEmpty()) {
            Flash.done(reply.next(), Said.begun(said.sentence()));
        }
        return BACK;
    }

    static void refuse(Said said, Reply reply) {
        reply.response().setStatus(said.meanwhile() ? MEANWHILE : REFUSED);
    }
}
