package org.plumbrow.project.gate.page;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.evidence.EvidenceFacts;
import org.plumbrow.evidence.EvidenceStore;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.project.Projects;
import org.plumbrow.project.Stage;
import org.plumbrow.project.gate.AnswerPart;
import org.plumbrow.project.gate.GateView;
import org.plumbrow.project.gate.Gates;
import org.plumbrow.project.gate.ItemState;
import org.plumbrow.project.gate.ItemView;
import org.plumbrow.web.Flash;
import org.plumbrow.web.NotFound;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Finds an item and lays out its page. */
@Component
class ItemDesk {

    private final Projects projects;
    private final ProjectTitles titles;
    private final Gates gates;
    private final EvidenceStore evidence;

    ItemDesk(Projects projects, ProjectTitles titles, Gates gates, EvidenceStore evidence) {
        this.projects = projects;
        this.titles = titles;
        this.gates = gates;
        this.evidence = evidence;
    }

    /** A part of an answer with the paper that it names. */
    record PartLine(AnswerPart part, @Nullable EvidenceFacts paper) {

        public String figure() {
            return part.number() == null ? "" : NumbersWritten.of(part.number()).replace('-', '−');
        }
    }

    static String address(UUID projectId, String code) {
        return "/projects/" + projectId + "/gate-items/" + code;
    }

    /** @throws NotFound if the item is not asked of this project */
    ItemView item(UUID projectId, String code) {
        return find(gates.view(projectId, stageOf(code)), code);
    }

    /** As {@link #item}, for somebody who wants to answer. @throws org.plumbrow.web.NotForYourRole if the role may not */
    ItemView toAnswer(UUID projectId, String code) {
        GateView gate = gates.view(projectId, stageOf(code));
        ItemView item = find(gate, code);
        gates.requireAnswer(gate, item);
        return item;
    }

    /** @param form what was typed, which lies in the model with its errors; null for the form as it opens */
    String page(UUID projectId, String code, @Nullable ItemForm form, Model model) {
        ProjectFacts facts = projects.facts(projectId);
        GateView gate = gates.view(facts, stageOf(code));
        ItemView item = find(gate, code);
        model.addAttribute("sheet", titles.of(facts));
        model.addAttribute("gate", gate);
        model.addAttribute("item", item);
        model.addAttribute("rights", gates.rights(gate, item));
        model.addAttribute("seenAt", gates.seenAt(gate, item).orElse(null));
        model.addAttribute("parts", parts(item));
        model.addAttribute("toExplain", ItemForm.toExplain(item));
        if (form == null) {
            model.addAttribute("form", ItemForm.of(item));
        }
        if (!model.containsAttribute("standForm")) {
            model.addAttribute("standForm", new StandPages.StandForm(item.version(), ""));
        }
        if (!model.containsAttribute("waitForm")) {
            model.addAttribute("waitForm", StandPages.WaitForm.of(item));
        }
        return "gate/item";
    }

    private List<PartLine> parts(ItemView item) {
        if (item.answer() == null) {
            return List.of();
        }
        List<AnswerPart> parts = item.answer().parts();
        Map<UUID, EvidenceFacts> papers = new HashMap<>();
        evidence.of(parts.stream()
                        .map(AnswerPart::evidenceId)
                        .filter(java.util.Objects::nonNull)
                        .distinct()
                        .toList())
                .forEach(paper -> papers.put(paper.id(), paper));
        return parts.stream()
                .map(part -> new PartLine(part, part.evidenceId() == null ? null : papers.get(part.evidenceId())))
                .toList();
    }

    /** To the gate when the item is done, else back to the item, with the sentence and its undo. */
    String done(UUID projectId, String code, RedirectAttributes next) {
        ItemView item = item(projectId, code);
        Flash.doneWithUndo(
                next,
                "“" + item.asked().words() + "”: " + lower(item.sentence()) + ".",
                address(projectId, code) + "/undo?version=" + item.version());
        boolean more = item.state() == ItemState.PARTLY || item.state() == ItemState.ASKED_ABOUT;
        return more
                ? "redirect:" + address(projectId, code)
                : "redirect:/projects/" + projectId + "/gates/"
                        + GatePages.path(item.asked().stage());
    }

    /** To the gate, with what stands in place of an answer now. */
    String stood(UUID projectId, String code, RedirectAttributes next) {
        ItemView item = item(projectId, code);
        if (item.state().shape().equals("na")) {
            Flash.doneWithUndo(
                    next, item.sentence() + ".", address(projectId, code) + "/undo?version=" + item.version());
        } else {
            Flash.done(next, "“" + item.asked().words() + "”: " + lower(item.sentence()) + ".");
        }
        return "redirect:/projects/" + projectId + "/gates/"
                + GatePages.path(item.asked().stage());
    }

    private static String lower(String sentence) {
        return sentence.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + sentence.substring(1);
    }

    private static ItemView find(GateView gate, String code) {
        return gate.items().stream()
                .filter(item -> item.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new NotFound(code));
    }

    private static Stage stageOf(String code) {
        int dot = code.indexOf('.');
        if (dot < 0) {
            throw new NotFound(code);
        }
        return GatePages.stage(code.substring(0, dot));
    }
}
