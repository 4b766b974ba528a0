package org.plumbrow.cutover.daylog;

import jakarta.servlet.http.HttpServletResponse;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.plumbrow.cutover.daylog.DayLogReading.Typed;
import org.plumbrow.cutover.daylog.DayLogSheet.EntryView;
import org.plumbrow.cutover.daylog.DayLogSheet.StepView;
import org.plumbrow.cutover.daylog.LogPages.Reply;
import org.plumbrow.cutover.daylog.LogPen.Said;
import org.plumbrow.web.Conflict;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** One entry of the log on a page of its own: put right with a reason, or taken back. */
@Controller
class LogEntryController {

    private static final String ENTRY = "entry";

    private final LogPages pages;
    private final LogChanges changes;
    private final LogPen pen;

    LogEntryController(LogPages pages, LogChanges changes, LogPen pen) {
        this.pages = pages;
        this.changes = changes;
        this.pen = pen;
    }

    @GetMapping("/projects/{projectId}/day-log/entries/{entryId}")
    String entry(@PathVariable UUID projectId, @PathVariable UUID entryId, Model model) {
        pages.show(projectId, ENTRY, Typed.NOTHING, model);
        return shown(entryId, model) ? "cutover/entry" : LogPages.BACK;
    }

    /** @return false when there is no such entry, or it is not changed any more */
    private static boolean shown(UUID entryId, Model model) {
        Optional<StepView> line = LogPages.sheet(model).steps().stream()
                .filter(step -> entryOf(step, entryId).isPresent())
                .findFirst();
        line.ifPresent(step -> {
            model.addAttribute("step", step.step());
            model.addAttribute(ENTRY, entryOf(step, entryId).orElseThrow());
        });
        return line.isPresent();
    }

    private static Optional<EntryView> entryOf(StepView step, UUID entryId) {
        return Stream.concat(step.entries().stream(), step.readings().stream())
                .filter(one -> one.id().equals(entryId) && one.changeable())
                .findFirst();
    }

    @PostMapping("/projects/{projectId}/day-log/entries/{entryId}")
    String correct(
            @PathVariable UUID projectId,
            @PathVariable UUID entryId,
            @RequestParam(defaultValue = "-1") long version,
            @RequestParam Map<String, String> all,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        TypedTime time = TypedTime.of(all.get("at"));
        LogChanges.Correction correction = new LogChanges.Correction(
                LogPages.entry(all), entryId, time.time(), all.get("value"), all.getOrDefault("reason", ""), version);
        Said said = time.isTime() ? changes.correct(projectId, correction) : TypedTime.refused("at");
        return answer(projectId, entryId, said, all, new Reply(ENTRY, model, response, next));
    }

    @PostMapping("/projects/{projectId}/day-log/entries/{entryId}/take-back")
    String takeBack(
            @PathVariable UUID projectId,
            @PathVariable UUID entryId,
            @RequestParam Map<String, String> all,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Said said = changes.takeBack(projectId, LogPages.entry(all), entryId, all.getOrDefault("reason", ""));
        return answer(projectId, entryId, said, all, new Reply(ENTRY, model, response, next));
    }

    private String answer(UUID projectId, UUID entryId, Said said, Map<String, String> all, Reply reply) {
        String view = pages.answer(projectId, said, all, reply);
        if (said.isStored()) {
            return view;
        }
        if (!shown(entryId, reply.model())) {
            return "cutover/day-log";
        }
        return said.meanwhile() ? conflict(projectId, entryId, all, reply.model()) : view;
    }

    /** Somebody corrected it meanwhile: theirs beside yours. */
    private String conflict(UUID projectId, UUID entryId, Map<String, String> yours, Model model) {
        DayLogSheet sheet = LogPages.sheet(model);
        EntryView theirs = sheet.steps().stream()
                .flatMap(step -> entryOf(step, entryId).stream())
                .findFirst()
                .orElseThrow();
        ZoneId zone = pen.zone(sheet.about().project().branchId());
        String at = theirs.at()
                .atZone(zone)
                .toLocalTime()
                .truncatedTo(ChronoUnit.MINUTES)
                .toString();
        return new Conflict(
                        "this entry",
                        "/projects/" + projectId + "/day-log/entries/" + entryId,
                        theirs.changes(),
                        List.of(
                                LogPages.beside("Time", "at", at, yours),
                                LogPages.beside("Value", "value", theirs.value(), yours),
                                LogPages.beside("Why", "reason", theirs.reason(), yours)))
                .show(model);
    }
}
