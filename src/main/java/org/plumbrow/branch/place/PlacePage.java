package org.plumbrow.branch.place;

import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.Saving;
import org.plumbrow.web.Access;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.Option;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The branch itself: name, zone, yard, travel. */
@Controller
class PlacePage {

    private static final String HERE = "/settings/branch";

    private static final List<Option> ZONES = List.of(
            new Option("America/New_York", "Eastern"),
            new Option("America/Chicago", "Central"),
            new Option("America/Denver", "Mountain"),
            new Option("America/Phoenix", "Mountain, Arizona"),
            new Option("America/Los_Angeles", "Pacific"),
            new Option("America/Anchorage", "Alaska"),
            new Option("Pacific/Honolulu", "Hawaii"),
            new Option("America/Puerto_Rico", "Atlantic, Puerto Rico"));

    private final BranchSettings settings;
    private final PlaceEditing editing;
    private final Access access;
    private final Saving saving;

    PlacePage(BranchSettings settings, PlaceEditing editing, Access access, Saving saving) {
        this.settings = settings;
        this.editing = editing;
        this.access = access;
        this.saving = saving;
    }

    @GetMapping(HERE)
    String show(Model model) {
        BranchFacts branch = settings.facts(access.require(May.CHANGE_SETTINGS).id());
        model.addAttribute("placeForm", PlaceForm.of(branch));
        return page(branch, model);
    }

    @PostMapping(HERE)
    String save(
            @Valid @ModelAttribute("placeForm") PlaceForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UUID branchId = access.require(May.CHANGE_SETTINGS).id();
        return saving.of(errors, response, () -> page(settings.facts(branchId), model))
                .make(
                        () -> {
                            var wrong = form.wrong();
                            if (wrong.isEmpty()) {
                                editing.change(branchId, form.version(), form.terms());
                            }
                            return wrong;
                        },
                        () -> {
                            Flash.done(next, "Saved.");
                            return "redirect:" + HERE;
                        },
                        model,
                        () -> form.terms().written(),
                        () -> theirs(settings.facts(branchId)));
    }

    private static Saving.Theirs theirs(BranchFacts branch) {
        return new Saving.Theirs(
                "this branch", HERE, branch.version(), PlaceTerms.of(branch).written());
    }

    private static String page(BranchFacts branch, Model model) {
        model.addAttribute("branchFacts", branch);
        model.addAttribute("zones", zones(branch.zone().getId()));
        return "branch/place";
    }

    /** The zones of the United States, and the branch's own where it is another one. */
    private static List<Option> zones(String own) {
        List<Option> zones = new ArrayList<>(ZONES);
        if (ZONES.stream().noneMatch(zone -> zone.value().equals(own))) {
            zones.add(new Option(own, own));
        }
        return zones;
    }
}
