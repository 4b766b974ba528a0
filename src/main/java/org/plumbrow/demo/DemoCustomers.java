package org.plumbrow.demo;

import java.time.Instant;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.Outages;
import org.plumbrow.demo.DemoCast.Cast;
import org.plumbrow.demo.DemoProjects.Told;
import org.plumbrow.evidence.EvidenceKind;
import org.plumbrow.evidence.EvidenceStore;
import org.plumbrow.evidence.Keeping;
import org.plumbrow.evidence.Upload;
import org.plumbrow.project.Duty;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.project.Standing;
import org.plumbrow.status.CustomerAnswers;
import org.plumbrow.status.CustomerLinks;
import org.plumbrow.status.CustomerSharing;
import org.plumbrow.status.CustomerTerms;
import org.plumbrow.status.DutyPhones;
import org.plumbrow.web.Access;
import org.springframework.stereotype.Component;

/** What the demo's customers are shown, and what they answered: every signed project that goes on has a link. */
@Component
@WithDemo
class DemoCustomers {

    private final Projects projects;
    private final CustomerLinks links;
    private final CustomerSharing sharing;
    private final CustomerAnswers answers;
    private final DutyPhones phones;
    private final Outages outages;
    private final EvidenceStore evidence;
    private final Access access;

    DemoCustomers(
            Projects projects,
            CustomerLinks links,
            CustomerSharing sharing,
            CustomerAnswers answers,
            DutyPhones phones,
            Outages outages,
            EvidenceStore evidence,
            Access access) {
        this.projects = projects;
        this.links = links;
        this.sharing = sharing;
        this.answers = answers;
        this.phones = phones;
        this.outages = outages;
        this.evidence = evidence;
        this.access = access;
    }

    void tell(List<Told> told, Cast cast, Story story) {
        Map<String, SeedRow> rows =
                SeedRow.of("customers.csv").stream().collect(Collectors.toMap(row -> row.text("key"), row -> row));
        Map<String, String> numbers = new HashMap<>();
        SeedRow.of("people.csv").forEach(row -> numbers.put(row.text("name"), row.text("phone")));
        Set<String> written = new HashSet<>();
        asManager(
                cast,
                story.at(story.daysAgo(6), LocalTime.of(9, 20)),
                () -> told.forEach(one -> show(one, rows.get(one.key()), numbers, written)));
        Map<String, UUID> ids = told.stream().collect(Collectors.toMap(Told::key, Told::id));
        SeedRow.of("customer-answers.csv")
                .forEach(row -> asManager(
                        cast,
                        story.at(story.daysAgo(row.whole("days_ago")), LocalTime.of(18, 40)),
                        () -> answer(projects.facts(ids.get(row.text("key"))), row)));
    }

    private void asManager(Cast cast, Instant at, Runnable work) {
        StoryClock.at(
                at,
                () -> access.as(cast.manager(), () -> {
                    work.run();
                    return Boolean.TRUE;
                }));
    }

    private void show(Told told, @Nullable SeedRow row, Map<String, String> numbers, Set<String> written) {
        ProjectFacts project = projects.facts(told.id());
        if (project.isNew() || project.standing() != Standing.OPEN) {
            return;
        }
        UUID contact = projects.contacts(told.id()).get(0).id();
        links.make(told.id(), contact);
        call(project, numbers, written);
        if (row != null) {
            share(project, row);
        }
    }

    private void call(ProjectFacts project, Map<String, String> numbers, Set<String> written) {
        project.inCharge(Duty.PROJECT_MANAGER)
                .filter(who -> !numbers.getOrDefault(who.name(), "").isEmpty() && written.add(who.name()))
                .ifPresent(who -> phones.write(project, Duty.PROJECT_MANAGER, 0, numbers.get(who.name())));
    }

    private void share(ProjectFacts project, SeedRow row) {
        UUID photo = row.yes("photo") ? photo(project) : null;
        sharing.change(project.id(), 0, new CustomerTerms(row.text("shut_off"), photo, row.text("message")));
        if (row.has("paper")) {
            // the oldest is the contract: papers are given newest first
            evidence.ofProject(project.id()).stream()
                    .filter(paper -> paper.kind() == EvidenceKind.DOCUMENT)
                    .reduce((newer, older) -> older)
                    .ifPresent(paper -> sharing.share(project.id(), paper.id(), row.text("paper")));
        }
    }

    private UUID photo(ProjectFacts project) {
        Upload picture = new Upload("shut-off.jpg", DemoPictures.photo("Shut-off"), "The shut-off");
        Keeping keeping = evidence.keep(project.branchId(), project.id(), picture, access.actor());
        if (keeping instanceof Keeping.Kept kept) {
            return kept.evidence().id();
        }
        throw new IllegalStateException("the drawn picture was not kept");
    }

    private void answer(ProjectFacts project, SeedRow row) {
        CustomerAnswers.Said said = new CustomerAnswers.Said(
                row.text("answer").equals("works"), row.text("reason"), row.text("answered_by"));
        outages.live(project.id())
                .ifPresent(window ->
                        answers.answer(project, projects.contacts(project.id()).get(0), window.day(), said));
    }
}
