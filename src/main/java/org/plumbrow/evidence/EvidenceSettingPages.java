package org.plumbrow.evidence;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Saving;
import org.plumbrow.branch.Written;
import org.plumbrow.web.Access;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.Place;
import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Whether a branch keeps where a photo was taken. */
@Controller
class EvidenceSettingPages {

    private static final int PLACE_ORDER = 25;
    private static final String HERE = "/settings/evidence";

    private final EvidenceSettings settings;
    private final Access access;
    private final Saving saving;

    EvidenceSettingPages(EvidenceSettings settings, Access access, Saving saving) {
        this.settings = settings;
        this.access = access;
        this.saving = saving;
    }

    @Bean
    static Place evidencePlace() {
        return Place.underOwnName(PLACE_ORDER, "evidence.settings.place", HERE, May.CHANGE_SETTINGS);
    }

    record PhotoPlaceForm(
            @Nullable Boolean keepsPhotoPlace, @Nullable Long version) {
        boolean keeps() {
            return Boolean.TRUE.equals(keepsPhotoPlace);
        }

        List<Written> written() {
            return EvidenceSettings.written(keeps());
        }
    }

    @GetMapping(HERE)
    String show(Model model) {
        EvidenceSettings.Choice now = settings.of(branch());
        model.addAttribute("photoPlaceForm", new PhotoPlaceForm(now.keepsPhotoPlace(), now.version()));
        return "evidence/settings";
    }

    @PostMapping(HERE)
    String choose(
            @ModelAttribute("photoPlaceForm") PhotoPlaceForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UUID branchId = branch();
        return saving.of(errors, response, () -> "evidence/settings")
                .make(
                        () -> {
                            settings.choose(branchId, form.keeps(), form.version() == null ? 0 : form.version());
                            return Optional.empty();
                        },
                        () -> done(form, next),
                        model,
                        form::written,
                        () -> theirs(branchId));
    }

    private static String done(PhotoPlaceForm form, RedirectAttributes next) {
        Flash.done(
                next,
                form.keeps()
                        ? "Saved: new photos keep the place where they were taken."
                        : "Saved: new photos keep no place.");
        return "redirect:" + HERE;
    }

    private Saving.Theirs theirs(UUID branchId) {
        EvidenceSettings.Choice now = settings.of(branchId);
        return new Saving.Theirs("this setting", HERE, now.version(), EvidenceSettings.written(now.keepsPhotoPlace()));
    }

    private UUID branch() {
        return access.require(May.CHANGE_SETTINGS).id();
    }
}
