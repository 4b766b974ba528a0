package org.plumbrow.survey;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.project.ProjectPage;
import org.plumbrow.web.Access;
import org.plumbrow.web.Conflict;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.Flash;
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

/** The survey of a project: what the designer still lacks, and a form for each part. */
@Controller
class SurveyPages {

    private static final int ORDER = 100;
    static final String BACK = "redirect:/projects/{projectId}/survey";

    private final SurveyReading reading;
    private final SurveyBook book;
    private final SurveyRemarks remarks;
    private final Access access;

    SurveyPages(SurveyReading reading, SurveyBook book, SurveyRemarks remarks, Access access) {
        this.reading = reading;
        this.book = book;
        this.remarks = remarks;
        this.access = access;
    }

    @Bean
    static ProjectPage surveyPage() {
        return new ProjectPage(ORDER, "survey.page", "/survey", May.SEE_PROJECTS);
    }

    @GetMapping("/projects/{projectId}/survey")
    String overview(@PathVariable UUID projectId, Model model) {
        SurveyReading.Overview overview = reading.overview(projectId);
        model.addAttribute("sheet", overview.title());
        model.addAttribute("overview", overview);
        return "survey/overview";
    }

    private static SurveyPart known(String path) {
        return SurveyPart.ofPath(path).orElseThrow(NotFound::new);
    }

    @GetMapping("/projects/{projectId}/survey/{surveyPart}")
    String part(@PathVariable UUID projectId, @PathVariable String surveyPart, Model model) {
        SurveyReading.Part part = reading.part(projectId, known(surveyPart));
        return show(part, PartForm.stored(part), "", model);
    }

    private String show(SurveyReading.Part part, PartForm form, String remarkRefused, Model model) {
        model.addAttribute("sheet", part.title());
        model.addAttribute("part", part);
        model.addAttribute("survey", form);
        model.addAttribute("remarkRefused", remarkRefused);
        model.addAttribute("mayWrite", access.may(SurveyBook.act(part.part()).name()));
        model.addAttribute(
                "nextWords", part.part().next().map(SurveyPart::words).orElse(""));
        model.addAttribute("nextAddress", "/projects/" + part.title().id() + "/survey" + after(part.part(), 0, ""));
        if (!form.problems().isEmpty() || !remarkRefused.isEmpty()) {
            model.addAttribute("formRefused", true);
        }
        part.sheet()
                .stored(part.part())
                .filter(book::offersUndo)
                .ifPresent(stored -> model.addAttribute(
                        "lastChange",
                        new LastChange(
                                stored, SurveyUndo.address(part.title().id(), stored.part(), stored.version()))));
        return "survey/part";
    }

    /** @param undo address that takes it back */
    record LastChange(SurveySheet.StoredPart stored, String undo) {}

    @PostMapping("/projects/{projectId}/survey/{surveyPart}")
    String save(
            @PathVariable UUID projectId,
            @PathVariable String surveyPart,
            @RequestParam(defaultValue = "-1") String version,
            @RequestParam Map<String, String> typed,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        SurveyPart part = known(surveyPart);
        try {
            SurveyBook.Said said = book.save(projectId, part, opened(version), typed);
            if (said instanceof SurveyBook.Said.Refused refused) {
                response.setStatus(422);
                SurveyReading.Part now = reading.part(projectId, part);
                return show(now, PartForm.typed(now, opened(version), typed, refused.refusals()), "", model);
            }
            return saved(part, (SurveyBook.Said.Stored) said, typed, next);
        } catch (EditedMeanwhile newer) {
            response.setStatus(409);
            return conflict(reading.part(projectId, part), projectId, typed).show(model);
        }
    }

    static long opened(String version) {
        return version.matches("\\d{1,12}") ? Long.parseLong(version) : -1;
    }

    private static String saved(
            SurveyPart part, SurveyBook.Said.Stored stored, Map<String, String> typed, RedirectAttributes next) {
        int asked = stored.open().size();
        if (asked > 0) {
            Flash.done(
                    next,
                    asked == 1
                            ? "Kept. One reading is asked about below."
                            : "Kept. %d readings are asked about below.".formatted(asked));
        } else {
            Flash.done(next, part.words() + ": kept.");
        }
        return BACK + after(part, asked, typed.getOrDefault("then", ""));
    }

    /** Where one goes on after a part: what is asked about is answered first. */
    static String after(SurveyPart part, int asked, String then) {
        if (asked > 0 || then.equals("stay")) {
            return "/" + part.path();
        }
        return part.next().map(following -> "/" + following.path()).orElse("");
    }

    static Conflict conflict(SurveyReading.Part now, UUID projectId, Map<String, String> typed) {
        List<Conflict.Row> rows = new ArrayList<>();
        for (SurveyField field : now.part().fields()) {
            row(field, "", now.readings(), typed).ifPresent(rows::add);
            row(field, PartReadings.WHY, now.readings(), typed).ifPresent(rows::add);
            row(field, PartTyping.TWICE, now.readings(), typed).ifPresent(rows::add);
        }
        return new Conflict(
                "this part of the survey",
                "/projects/" + projectId + "/survey/" + now.part().path(),
                now.version(),
                rows);
    }

    private static Optional<Conflict.Row> row(
            SurveyField field, String behind, PartReadings theirs, Map<String, String> typed) {
        String stored = theirs.written(field.name() + behind);
        String yours = PartTyping.text(typed, field.name() + behind);
        if (stored.isEmpty() && yours.isEmpty()) {
            return Optional.empty();
        }
        String label = field.label()
                + switch (behind) {
                    case PartReadings.WHY -> ", why it stays";
                    case PartTyping.TWICE -> ", read twice";
                    default -> "";
                };
        boolean plain = behind.isEmpty();
        return Optional.of(new Conflict.Row(
                label,
                field.name() + behind,
                stored,
                yours,
                plain ? field.words(stored) : stored,
                plain ? field.words(yours) : yours));
    }

    @PostMapping("/projects/{projectId}/survey/{surveyPart}/remark")
    String remark(
            @PathVariable UUID projectId,
            @PathVariable String surveyPart,
            @RequestParam(defaultValue = "") String remark,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        SurveyPart part = known(surveyPart);
        Optional<Refusal> refused = remarks.add(projectId, part, remark);
        if (refused.isPresent()) {
            response.setStatus(422);
            model.addAttribute("remark", remark);
            SurveyReading.Part now = reading.part(projectId, part);
            return show(now, PartForm.stored(now), refused.get().sentence(), model);
        }
        Flash.done(next, "Asked. It stands with the survey until somebody says that it is settled.");
        return BACK + "/" + part.path();
    }

    @PostMapping("/survey-remarks/{remarkId}/settled")
    String settled(@PathVariable UUID remarkId, RedirectAttributes next) {
        next.addAttribute("projectId", remarks.settle(remarkId));
        Flash.done(next, "Settled. The journal says by whom.");
        return BACK;
    }
}
