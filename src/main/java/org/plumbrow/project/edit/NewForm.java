package org.plumbrow.project.edit;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.plumbrow.account.PersonCard;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.project.Duty;
import org.plumbrow.project.NewProject;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectLimits;
import org.plumbrow.web.Entered;

/** A project that begins, as typed: fields of the site and of the contract go by the same names as on their own pages. */
record NewForm(
        @Nullable String name,
        @Nullable String customer,
        @Nullable String phone,
        @Nullable String email,
        @Nullable String street,
        @Nullable String town,
        @Nullable String state,
        @Nullable String zip,
        @Nullable String coordinates,
        @Nullable List<String> loads,
        @Nullable List<String> features,
        @Nullable String utility,
        @Nullable String permitOffice,
        @Nullable String meterNumbers,
        @Nullable String systemKwDc,
        @Nullable String systemKwAc,
        @Nullable List<ContractForm.ArrayForm> arrays,
        @Nullable String inverters,
        @Nullable String inverterKwAc,
        @Nullable String guaranteedKwh,
        @Nullable String priceUsd,
        @Nullable String promisedOn,
        @Nullable String manager) {

    static NewForm blank(String managerId, String kwDc, String mounting) {
        return new NewForm(
                "",
                "",
                "",
                "",
                "",
                "",
                "",
                "",
                "",
                List.of(),
                List.of(),
                "",
                "",
                "",
                kwDc,
                "",
                List.of(new ContractForm.ArrayForm(mounting, "", "", "", "")),
                "",
                "",
                "",
                "",
                "",
                managerId);
    }

    /** @return what was typed; only to be used when nothing was refused */
    NewProject read(Entered entered, SiteChoices choices, List<PersonCard> people, String by) {
        String called = entered.given("name", "the name of the project", name, ProjectLimits.LONGEST_NAME);
        String whose = entered.given("customer", "the customer's name", customer, ProjectLimits.LONGEST_NAME);
        String reachedBy = ContactForm.phone(entered, "phone", phone);
        String mail = ContactForm.email(entered, "email", email);
        LocalDate day = entered.date("promisedOn", "the promised day", promisedOn);
        return new NewProject(
                called,
                null,
                whose,
                List.of(new NewProject.NewContact(whose, "decides", reachedBy, mail, "en", true)),
                site().read(entered, choices),
                contract().read(entered),
                day == null ? null : new NewProject.NewPromise(Milestone.SYSTEM_ON, day, 0, by, ""),
                inCharge(entered, people));
    }

    private SiteForm site() {
        return new SiteForm(
                street, town, state, zip, coordinates, loads, features, utility, permitOffice, meterNumbers, null);
    }

    private ContractForm contract() {
        return new ContractForm(
                systemKwDc, systemKwAc, arrays, inverters, inverterKwAc, "", "", "", "", guaranteedKwh, priceUsd, null);
    }

    private Map<Duty, ProjectFacts.InCharge> inCharge(Entered entered, List<PersonCard> people) {
        Map<Duty, ProjectFacts.InCharge> inCharge = new EnumMap<>(Duty.class);
        String chosen = Entered.text(manager);
        if (!chosen.isEmpty()) {
            people.stream()
                    .filter(card -> card.id().toString().equals(chosen))
                    .findFirst()
                    .ifPresentOrElse(
                            card -> inCharge.put(
                                    Duty.PROJECT_MANAGER, new ProjectFacts.InCharge(card.id(), card.name())),
                            () -> entered.refuse("manager", "Choose somebody of the branch."));
        }
        return inCharge;
    }
}
