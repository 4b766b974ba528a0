package org.plumbrow.cutover.daylog;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.daylog.DayLogReading.Typed;
import org.plumbrow.cutover.daylog.LogPages.Reply;
import org.plumbrow.cutover.daylog.LogPen.Said;
import org.plumbrow.evidence.Upload;
import org.plumbrow.web.Conflict;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What is done beside the steps, some of it on a page of its own: a photo, something is wrong, the way back. */
@Controller
class DayLogChangesController {

    private static final String LOG = "day-log";
    private static final String WRONG = "wrong";
    private static final String REVERSAL_TIME = "reversal-time";

    private final LogPages pages;
    private final LogChanges changes;
    private final LogPhotos photos;
    private final LogReversal reversal;

    DayLogChangesController(LogPages pages, LogChanges changes, LogPhotos photos, LogReversal reversal) {
        this.pages = pages;
        this.changes = changes;
        this.photos = photos;
        this.reversal = reversal;
    }

    @PostMapping("/projects/{projectId}/day-log/steps/{logStep}/photo")
    String photo(
            @PathVariable UUID projectId,
            @PathVariable String logStep,
            @RequestParam Map<String, String> all,
            @RequestParam(required = false) @Nullable MultipartFile photo,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Upload upload = photo == null || photo.isEmpty() ? null : Upload.of(photo, "");
        Said said = photos.add(projectId, LogPages.entry(all), logStep, upload);
        return pages.answer(projectId, said, Map.of(), new Reply(LOG, model, response, next));
    }

    @GetMapping("/projects/{projectId}/day-log/wrong")
    String wrong(@PathVariable UUID projectId, Model model) {
        return pages.show(projectId, WRONG, Typed.NOTHING, model);
    }

    @PostMapping("/projects/{projectId}/day-log/wrong")
    String wrong(
            @PathVariable UUID projectId,
            @RequestParam Map<String, String> all,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Said said = changes.wrong(projectId, LogPages.entry(all), all.getOrDefault("text", ""));
        return pages.answer(projectId, said, all, new Reply(WRONG, model, response, next));
    }

    @GetMapping("/projects/{projectId}/day-log/reversal-time")
    String reversalTime(@PathVariable UUID projectId, Model model) {
        return pages.show(projectId, REVERSAL_TIME, Typed.NOTHING, model);
    }

    @PostMapping("/projects/{projectId}/day-log/reversal-time")
    String reversalTime(
            @PathVariable UUID projectId,
            @RequestParam(defaultValue = "-1") long version,
            @RequestParam Map<String, String> all,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        LogReversal.Setting setting = new LogReversal.Setting(
                LogPages.entry(all),
                TypedTime.of(all.get("neededBy")).time(),
                minutes(all.get("undoMinutes")),
                minutes(all.get("bringBackMinutes")),
                minutes(all.get("reserveMinutes")),
                all.getOrDefault("reason", ""),
                version);
        boolean isTime = TypedTime.of(all.get("neededBy")).isTime();
        Said said = isTime ? reversal.latest(projectId, setting) : TypedTime.refused("neededBy");
        Reply reply = new Reply(REVERSAL_TIME, model, response, next);
        return said.meanwhile() ? conflict(projectId, said, all, reply) : pages.answer(projectId, said, all, reply);
    }

    /** Somebody set it meanwhile: theirs beside yours. */
    private String conflict(UUID projectId, Said said, Map<String, String> all, Reply reply) {
        pages.answer(projectId, said, all, reply);
        DayLogSheet sheet = LogPages.sheet(reply.model());
        DayLogSheet.ReversalView theirs = sheet.reversal();
        if (theirs == null) {
            return LogPages.BACK;
        }
        var latest = theirs.time().latest();
        return new Conflict(
                        "the latest reversal time",
                        "/projects/" + projectId + "/day-log/reversal-time",
                        sheet.reversalTimes(),
                        List.of(
                                LogPages.beside(
                                        "The loads must run again by",
                                        "neededBy",
                                        latest.neededBy().toLocalTime(),
                                        all),
                                LogPages.beside(
                                        "What needs the power by then",
                                        "reason",
                                        theirs.time().why(),
                                        all),
                                LogPages.beside(
                                        "Minutes to undo and close again", "undoMinutes", latest.undoMinutes(), all),
                                LogPages.beside(
                                        "Minutes to bring the loads back",
                                        "bringBackMinutes",
                                        latest.bringBackMinutes(),
                                        all),
                                LogPages.beside("Minutes of reserve", "reserveMinutes", latest.reserveMinutes(), all)))
                .show(reply.model());
    }

    /** Empty is the usual; what is no whole number lies outside every limit. */
    private static @Nullable Integer minutes(@Nullable String typed) {
        if (typed == null || typed.isBlank()) {
            return null;
        }
        return typed.strip().matches("\\d{1,3}") ? Integer.parseInt(typed.strip()) : -1;
    }

    @PostMapping("/projects/{projectId}/day-log/reverse")
    String reverse(
            @PathVariable UUID projectId,
            @RequestParam Map<String, String> all,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Said said = reversal.reverse(projectId, LogPages.entry(all));
        return pages.answer(projectId, said, Map.of(), new Reply(LOG, model, response, next));
    }

    @PostMapping("/projects/{projectId}/day-log/reverse-mistake")
    String reverseMistake(
            @PathVariable UUID projectId,
            @RequestParam Map<String, String> all,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Said said = reversal.begunByMistake(projectId, LogPages.entry(all), all.getOrDefault("mistake", ""));
        return pages.answer(projectId, said, all, new Reply(LOG, model, response, next));
    }

    @PostMapping("/projects/{projectId}/day-log/reverse-reason")
    String reverseReason(
            @PathVariable UUID projectId,
            @RequestParam Map<String, String> all,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Said said = reversal.reason(projectId, LogPages.entry(all), all.getOrDefault("reason", ""));
        return pages.answer(projectId, said, all, new Reply(LOG, model, response, next));
    }

    @PostMapping("/projects/{projectId}/day-log/power-on")
    String powerOn(
            @PathVariable UUID projectId,
            @RequestParam Map<String, String> all,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        TypedTime time = TypedTime.of(all.get("at"));
        Said said =
                time.isTime() ? reversal.powerOn(projectId, LogPages.entry(all), time.time()) : TypedTime.refused("at");
        return pages.answer(projectId, said, all, new Reply(LOG, model, response, next));
    }
}
