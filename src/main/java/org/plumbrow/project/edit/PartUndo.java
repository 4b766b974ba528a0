package org.plumbrow.project.edit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.plumbrow.account.BranchPeople;
import org.plumbrow.project.JournalLine;
import org.plumbrow.project.JournalReader;
import org.plumbrow.project.JournalUndo;
import org.plumbrow.project.PartFields;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectCustomers;
import org.plumbrow.project.ProjectEditing;
import org.plumbrow.project.Projects;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.MapBindingResult;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/**
 * Undoes a change of contract, people or customer: the opposite act as a new change. A value that somebody changed since
 * goes back too, to what it was before the line. Not for the site: where a house stands is not in the journal.
 */
@Controller
class PartUndo implements JournalUndo {

    private static final Set<String> KINDS =
            Set.of("project.contract", "project.people", "customer.added", "customer.changed", "customer.removed");

    private final ProjectAccess access;
    private final JournalReader journal;
    private final ProjectEditing editing;
    private final ProjectCustomers customers;
    private final Projects projects;
    private final BranchPeople people;

    PartUndo(
            ProjectAccess access,
            JournalReader journal,
            ProjectEditing editing,
            ProjectCustomers customers,
            Projects projects,
            BranchPeople people) {
        this.access = access;
        this.journal = journal;
        this.editing = editing;
        this.customers = customers;
        this.projects = projects;
        this.people = people;
    }

    @Override
    public Optional<String> action(JournalLine line) {
        boolean priceIsWithheld =
                line.kind().equals("project.contract") && line.facts().isEmpty();
        return KINDS.contains(line.kind()) && !priceIsWithheld
                ? Optional.of("/projects/" + line.projectId() + "/journal/" + line.number() + "/undo")
                : Optional.empty();
    }

    @PostMapping("/projects/{projectId}/journal/{lineNumber}/undo")
    @Transactional
    public String undo(@PathVariable UUID projectId, @PathVariable int lineNumber, RedirectAttributes next) {
        access.require(projectId, May.EDIT_PROJECT);
        JournalLine line = journal.line(projectId, lineNumber).orElseThrow(NotFound::new);
        if (action(line).isEmpty()) {
            throw new NotFound("an undo of " + line.kind());
        }
        Optional<Integer> done = switch (line.kind()) {
            case "project.contract" -> contract(line);
            case "project.people" -> people(line);
            default -> customers.turnBack(line);
        };
        Flash.done(
                next, done.isPresent() ? "Undone, as a new line of the journal." : "It is as it was before already.");
        return "redirect:/projects/{projectId}/journal";
    }

    private Optional<Integer> contract(JournalLine line) {
        var part = editing.contract(line.projectId());
        Values before = before(Values.of(PartFields.contract(part.facts())), line);
        var errors = new MapBindingResult(new LinkedHashMap<>(), "form");
        var to = ContractForm.of(before, part.version()).read(new Entered(errors));
        return errors.hasErrors() ? Optional.empty() : editing.correctContract(line.projectId(), part.version(), to);
    }

    private Optional<Integer> people(JournalLine line) {
        var part = editing.people(line.projectId());
        Values before = before(Values.of(PartFields.people(part.facts())), line);
        var errors = new MapBindingResult(new LinkedHashMap<>(), "form");
        var branch = people.of(projects.facts(line.projectId()).branchId());
        var to = PeopleForm.of(before, part.version()).read(new Entered(errors), branch, part.facts());
        return errors.hasErrors() ? Optional.empty() : editing.assign(line.projectId(), part.version(), to);
    }

    /** As it stands, but for what the line changed. */
    private static Values before(Values now, JournalLine line) {
        Map<String, String> values = new LinkedHashMap<>(now.byName());
        line.facts().forEach((name, value) -> {
            if (name.endsWith(".from")) {
                values.put(name.substring(0, name.length() - ".from".length()), value);
            }
        });
        return new Values(values);
    }
}
