package org.plumbrow.cutover.daylog;

import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.cutover.daylog.DayLogReading.Typed;
import org.plumbrow.cutover.daylog.LogPages.Reply;
import org.plumbrow.cutover.daylog.LogPen.Said;
import org.plumbrow.project.ProjectPage;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The day log on the phone: one step at a time, everything by one thumb. */
@Controller
class DayLogController {

    private static final int ORDER = 510;
    private static final String READING = "r.";
    private static final String SEEN = "seen.";
    private static final String STAYS = "stays.";
    private static final String LOG = "day-log";

    private final DayLogReading reading;
    private final LogPages pages;
    private final DayLogBook book;
    private final LogSteps steps;
    private final LogHolds holds;

    DayLogController(DayLogReading reading, LogPages pages, DayLogBook book, LogSteps steps, LogHolds holds) {
        this.reading = reading;
        this.pages = pages;
        this.book = book;
        this.steps = steps;
        this.holds = holds;
    }

    @Bean
    static ProjectPage dayLogPage() {
        return new ProjectPage(ORDER, "cutover.page.daylog", "/day-log", May.RUN_CUTOVER);
    }

    @GetMapping("/projects/{projectId}/day-log")
    String log(
            @PathVariable UUID projectId,
            @RequestParam(required = false) @Nullable Boolean night,
            HttpSession session,
            Model model) {
        if (night != null) {
            DimLight.turn(session, night);
            model.addAttribute("night", night);
        }
        return pages.show(projectId, LOG, Typed.NOTHING, model);
    }

    /** The log of another day, to be looked at. */
    @GetMapping("/projects/{projectId}/day-log/of/{windowId}")
    String past(@PathVariable UUID projectId, @PathVariable UUID windowId, Model model) {
        return reading.past(projectId, windowId)
                .map(sheet -> pages.show(sheet, LOG, Typed.NOTHING, model))
                .orElse(LogPages.BACK);
    }

    @PostMapping("/projects/{projectId}/day-log")
    String open(
            @PathVariable UUID projectId,
            @RequestParam(defaultValue = "") String service,
            @RequestParam(defaultValue = "") String personInCharge,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Optional<Service> known = Arrays.stream(Service.values())
                .filter(one -> one.name().equals(service))
                .findFirst();
        Optional<Refusal> refusal = known.isEmpty()
                ? Optional.of(new Refusal("service", "Choose the kind of service."))
                : book.open(projectId, known.get(), personInCharge);
        Said said = refusal.map(no -> Said.refused(List.of(no))).orElse(Said.stored(""));
        Map<String, String> typed = Map.of("personInCharge", personInCharge, "service", service);
        return pages.answer(projectId, said, typed, new Reply(LOG, model, response, next));
    }

    @PostMapping("/projects/{projectId}/day-log/steps/{logStep}/done")
    String done(
            @PathVariable UUID projectId,
            @PathVariable String logStep,
            @RequestParam Map<String, String> all,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        LogSteps.Work work = work(logStep, all);
        return answer(projectId, all, work, steps::done, new Reply(LOG, model, response, next));
    }

    @PostMapping("/projects/{projectId}/day-log/steps/{logStep}/readings")
    String readings(
            @PathVariable UUID projectId,
            @PathVariable String logStep,
            @RequestParam Map<String, String> all,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        LogSteps.Work work = work(logStep, all);
        return answer(projectId, all, work, steps::read, new Reply(LOG, model, response, next));
    }

    /** What a phone has put right of a tap that came before. */
    List<Refusal> putRight(UUID projectId, String logStep, Map<String, String> all) {
        return steps.putRight(projectId, work(logStep, all)).refusals();
    }

    /** What is done with the work of a step. */
    private interface Act {
        Said with(UUID projectId, LogSteps.Work work);
    }

    private String answer(UUID projectId, Map<String, String> all, LogSteps.Work work, Act act, Reply reply) {
        boolean isTime = TypedTime.of(all.get("at")).isTime();
        Said said = isTime ? act.with(projectId, work) : TypedTime.refused("at");
        Map<String, String> typed = new HashMap<>(work.typed());
        typed.put("at", all.getOrDefault("at", ""));
        typed.put("who", work.who());
        return pages.answer(projectId, said, typed, work.stays(), reply);
    }

    private static LogSteps.Work work(String step, Map<String, String> all) {
        if (ProcedureTable.LINES.stream().noneMatch(line -> line.code().equals(step))) {
            throw new NotFound("step " + step);
        }
        Map<String, String> typed = new HashMap<>(named(all, READING));
        typed.values().removeIf(String::isBlank);
        return new LogSteps.Work(
                LogPages.entry(all),
                step,
                typed,
                named(all, STAYS),
                TypedTime.of(all.get("at")).time(),
                named(all, SEEN),
                all.getOrDefault("who", ""));
    }

    private static Map<String, String> named(Map<String, String> all, String prefix) {
        Map<String, String> named = new HashMap<>();
        all.forEach((name, value) -> {
            if (name.startsWith(prefix)) {
                named.put(name.substring(prefix.length()), value);
            }
        });
        return named;
    }

    @PostMapping("/projects/{projectId}/day-log/holds/{logHold}/sign")
    String sign(
            @PathVariable UUID projectId,
            @PathVariable String logHold,
            @RequestParam Map<String, String> all,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Hold hold = Arrays.stream(Hold.values())
                .filter(one -> one.name().equals(logHold))
                .findFirst()
                .orElseThrow(() -> new NotFound("hold point " + logHold));
        TypedTime time = TypedTime.of(all.get("at"));
        LogHolds.Signing signing = new LogHolds.Signing(
                LogPages.entry(all),
                hold,
                part(hold, all.getOrDefault("part", "")),
                all.getOrDefault("name", ""),
                all.getOrDefault("trade", ""),
                time.time(),
                all.getOrDefault("isHere", "").equals("yes"));
        Said said = time.isTime() ? holds.sign(projectId, signing) : TypedTime.refused("at");
        return pages.answer(projectId, said, all, new Reply(LOG, model, response, next));
    }

    private static Hold.Part part(Hold hold, String name) {
        return Arrays.stream(Hold.Part.values())
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElse(hold.parts().get(0));
    }

    @PostMapping("/projects/{projectId}/day-log/close")
    String close(@PathVariable UUID projectId, Model model, HttpServletResponse response, RedirectAttributes next) {
        Said said = book.close(projectId)
                .map(no -> Said.refused(List.of(no)))
                .orElse(Said.stored("The day log is closed."));
        return pages.answer(projectId, said, Map.of(), new Reply(LOG, model, response, next));
    }
}
