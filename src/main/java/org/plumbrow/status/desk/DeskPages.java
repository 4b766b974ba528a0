package org.plumbrow.status.desk;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.branch.Saving;
import org.plumbrow.project.Duty;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectPage;
import org.plumbrow.status.CustomerSharing;
import org.plumbrow.status.CustomerTerms;
import org.plumbrow.status.DutyPhones;
import org.plumbrow.status.desk.DeskForms.PhoneForm;
import org.plumbrow.status.desk.DeskForms.WordsForm;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Option;
import org.plumbrow.web.Refusal;
import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What a project's customer is shown and told, and what they say: on one page, each change on a page of its own. */
@Controller
class DeskPages {

    private static final int ORDER = 750;
    private static final String BACK = "redirect:/projects/{projectId}/customer";

    private final DeskReading reading;
    private final CustomerSharing sharing;
    private final DutyPhones phones;
    private final Saving saving;

    DeskPages(DeskReading reading, CustomerSharing sharing, DutyPhones phones, Saving saving) {
        this.reading = reading;
        this.sharing = sharing;
        this.phones = phones;
        this.saving = saving;
    }

    @Bean
    static ProjectPage customerPageOfProject() {
        return new ProjectPage(ORDER, "status.desk.link", "/customer", May.SHARE_WITH_CUSTOMER);
    }

    @GetMapping("/projects/{projectId}/customer")
    String sheet(@PathVariable UUID projectId, Model model) {
        model.addAttribute("sheet", reading.sheet(projectId));
        return "status/desk";
    }

    /** The customer's page without its link: nothing can be answered here. */
    @GetMapping("/projects/{projectId}/customer/preview")
    String preview(@PathVariable UUID projectId, Model model) {
        String base = "/projects/" + projectId + "/customer";
        UUID photo = reading.words(projectId).terms().shutOffPhotoId();
        model.addAttribute("view", reading.preview(projectId));
        model.addAttribute("preview", base);
        model.addAttribute("photo", "/evidence/" + photo);
        model.addAttribute("photoSmall", "/evidence/" + photo + "/thumbnail");
        model.addAttribute("paperBase", base + "/shown");
        return "status/customer";
    }

    @GetMapping("/projects/{projectId}/customer/shown/{paperSlot}")
    String shown(@PathVariable UUID projectId, @PathVariable String paperSlot) {
        return "redirect:/evidence/" + reading.shown(projectId, paperSlot);
    }

    @GetMapping("/projects/{projectId}/customer/words")
    String words(@PathVariable UUID projectId, Model model) {
        model.addAttribute("wordsForm", WordsForm.of(reading.words(projectId)));
        return wordsPage(projectId, model);
    }

    private String wordsPage(UUID projectId, Model model) {
        List<Option> photos = new ArrayList<>();
        photos.add(new Option("", "No photo"));
        reading.photos(projectId)
                .forEach(photo -> photos.add(
                        new Option(photo.id().toString(), photo.caption().isBlank() ? photo.name() : photo.caption())));
        model.addAttribute("photos", photos);
        model.addAttribute("about", reading.title(projectId));
        return "status/words";
    }

    @PostMapping("/projects/{projectId}/customer/words")
    String words(
            @PathVariable UUID projectId,
            @ModelAttribute("wordsForm") WordsForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        String address = "/projects/" + projectId + "/customer/words";
        reading.title(projectId);
        return saving.of(errors, response, () -> wordsPage(projectId, model))
                .make(
                        () -> change(projectId, form),
                        () -> {
                            Flash.done(next, "Saved. The customer reads it from now on.");
                            return BACK;
                        },
                        model,
                        form::written,
                        () -> theirs(reading.words(projectId), address));
    }

    private Optional<Refusal> change(UUID projectId, WordsForm form) {
        Optional<CustomerTerms> terms = form.terms();
        return terms.isEmpty()
                ? Optional.of(new Refusal("shutOffPhoto", "Choose one of this project's photos, or none."))
                : sharing.change(projectId, DeskForms.version(form.version()), terms.get());
    }

    private static Saving.Theirs theirs(CustomerSharing.Written now, String address) {
        return new Saving.Theirs(
                "what the customer reads",
                address,
                now.version(),
                WordsForm.of(now).written());
    }

    @GetMapping("/projects/{projectId}/customer/phone/{customerDuty}")
    String phone(@PathVariable UUID projectId, @PathVariable String customerDuty, Model model) {
        DutyPhones.Reached now = reading.phone(reading.project(projectId), duty(customerDuty));
        model.addAttribute("phoneForm", new PhoneForm(now.phone(), now.version()));
        return phonePage(projectId, customerDuty, model);
    }

    /** "project-manager", "person-in-charge". @throws NotFound if customers are not told of such people */
    private static Duty duty(String inAddress) {
        return DutyPhones.CALLED.stream()
                .filter(duty -> address(duty).equals(inAddress))
                .findFirst()
                .orElseThrow(NotFound::new);
    }

    static String address(Duty duty) {
        return duty.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    private String phonePage(UUID projectId, String duty, Model model) {
        model.addAttribute("who", reading.phone(reading.project(projectId), duty(duty)));
        model.addAttribute("duty", duty);
        model.addAttribute("about", reading.title(projectId));
        return "status/phone";
    }

    @PostMapping("/projects/{projectId}/customer/phone/{customerDuty}")
    String phone(
            @PathVariable UUID projectId,
            @PathVariable String customerDuty,
            @ModelAttribute("phoneForm") PhoneForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        ProjectFacts project = reading.project(projectId);
        Duty duty = duty(customerDuty);
        DutyPhones.Reached now = reading.phone(project, duty);
        String address = "/projects/" + projectId + "/customer/phone/" + customerDuty;
        return saving.of(errors, response, () -> phonePage(projectId, customerDuty, model))
                .make(
                        () -> phones.write(
                                project, duty, DeskForms.version(form.version()), DeskForms.text(form.phone())),
                        () -> {
                            Flash.done(next, "Saved for all customers of " + now.name() + ".");
                            return BACK;
                        },
                        model,
                        form::written,
                        () -> new Saving.Theirs(
                                "this number",
                                address,
                                now.version(),
                                new PhoneForm(now.phone(), now.version()).written()));
    }
}
