package org.plumbrow.project.edit;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Saving;
import org.plumbrow.branch.Written;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectCustomers;
import org.plumbrow.project.ProjectLimits;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.Option;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The customer, and whom to ask there. */
@Controller
class ContactsPage {

    /** The customer's name as typed. */
    record CustomerForm(@Nullable String customer, @Nullable String version) {}

    private final ProjectCustomers customers;
    private final ProjectAccess access;
    private final Editing answers;

    ContactsPage(ProjectCustomers customers, ProjectAccess access, Editing answers) {
        this.customers = customers;
        this.access = access;
        this.answers = answers;
    }

    @ModelAttribute("languages")
    List<Option> languages() {
        return List.of(new Option("en", "English"), new Option("es", "Spanish"));
    }

    @GetMapping("/projects/{projectId}/contacts")
    String show(@PathVariable UUID projectId, Model model) {
        ProjectCustomers.Customer customer = edited(projectId);
        model.addAttribute("form", new CustomerForm(customer.name(), Long.toString(customer.version())));
        return list(projectId, customer, model);
    }

    private String list(UUID projectId, ProjectCustomers.Customer customer, Model model) {
        model.addAttribute("customer", customer);
        return answers.page(projectId, model, "project/contacts");
    }

    @PostMapping("/projects/{projectId}/contacts")
    String rename(
            @PathVariable UUID projectId,
            @ModelAttribute("form") CustomerForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        ProjectCustomers.Customer customer = edited(projectId);
        model.addAttribute("customer", customer);
        String address = address(projectId);
        return answers.answer(
                new Editing.Posted(projectId, errors, model, response, next, "project/contacts", address),
                () -> new Entered(errors)
                        .given("customer", "the customer's name", form.customer, ProjectLimits.LONGEST_NAME),
                to -> customers.rename(projectId, Entered.version(form.version), to),
                () -> new Saving.Theirs(
                        "the customer",
                        address,
                        customer.version(),
                        List.of(Written.of("customer", "customer", customer.name()))),
                () -> List.of(Written.of("customer", "customer", Entered.text(form.customer))));
    }

    @GetMapping("/projects/{projectId}/contacts/add")
    String adding(@PathVariable UUID projectId, Model model) {
        model.addAttribute("form", ContactForm.blank(edited(projectId).version()));
        return form(projectId, null, model);
    }

    @PostMapping("/projects/{projectId}/contacts/add")
    String add(
            @PathVariable UUID projectId,
            @ModelAttribute("form") ContactForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        ProjectCustomers.Customer customer = edited(projectId);
        model.addAttribute("contactId", null);
        String address = address(projectId);
        return answers.answer(
                new Editing.Posted(projectId, errors, model, response, next, "project/contact", address),
                () -> form.read(new Entered(errors)),
                contact -> Optional.of(customers.addContact(projectId, Entered.version(form.version()), contact)),
                () -> new Saving.Theirs(
                        "the contacts",
                        address + "/add",
                        customer.version(),
                        ContactForm.blank(0).written()),
                form::written);
    }

    @GetMapping("/projects/{projectId}/contacts/{contactId}")
    String correcting(@PathVariable UUID projectId, @PathVariable UUID contactId, Model model) {
        ProjectCustomers.Customer customer = edited(projectId);
        model.addAttribute("form", ContactForm.of(customer.contact(contactId), customer.version()));
        return form(projectId, contactId, model);
    }

    private String form(UUID projectId, @Nullable UUID contactId, Model model) {
        model.addAttribute("contactId", contactId);
        return answers.page(projectId, model, "project/contact");
    }

    @PostMapping("/projects/{projectId}/contacts/{contactId}")
    String correct(
            @PathVariable UUID projectId,
            @PathVariable UUID contactId,
            @ModelAttribute("form") ContactForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        ProjectCustomers.Customer customer = edited(projectId);
        model.addAttribute("contactId", contactId);
        String address = address(projectId);
        return answers.answer(
                new Editing.Posted(projectId, errors, model, response, next, "project/contact", address),
                () -> form.read(new Entered(errors)),
                to -> customers.correctContact(projectId, Entered.version(form.version()), contactId, to),
                () -> new Saving.Theirs(
                        "this contact",
                        address + "/" + contactId,
                        customer.version(),
                        ContactForm.of(customer.contact(contactId), 0).written()),
                form::written);
    }

    @PostMapping("/projects/{projectId}/contacts/{contactId}/remove")
    String remove(
            @PathVariable UUID projectId,
            @PathVariable UUID contactId,
            @RequestParam(name = "version", defaultValue = "-1") long version,
            RedirectAttributes next) {
        try {
            customers.removeContact(projectId, version, contactId);
            Flash.done(next, "The contact is removed. The journal keeps that it was there.");
        } catch (EditedMeanwhile newer) {
            Flash.done(next, "Somebody changed the contacts after you opened them. Look at them as they are now.");
        }
        return "redirect:" + address(projectId);
    }

    private ProjectCustomers.Customer edited(UUID projectId) {
        access.require(projectId, May.EDIT_PROJECT);
        return customers.customer(projectId);
    }

    private static String address(UUID projectId) {
        return "/projects/" + projectId + "/contacts";
    }
}
