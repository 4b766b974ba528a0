package org.plumbrow.project.gate;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.plumbrow.database.BackgroundTasks;
import org.plumbrow.project.Duty;
import org.plumbrow.project.Journal;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectOutlook;
import org.plumbrow.project.ProjectOutlook.AtTheGate;
import org.plumbrow.project.Projects;
import org.plumbrow.project.Stage;
import org.plumbrow.web.May;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** How the gates of a project stand. Answering is {@link GateAnswers}, letting through {@link GatePassing}. */
@Service
@Transactional(readOnly = true)
public class Gates {

    private final GateBook book;
    private final Projects projects;
    private final ProjectOutlook outlook;
    private final Journal journal;
    private final GateRoles roles;
    private final BackgroundTasks tasks;
    private final GateRules rules;

    Gates(
            GateBook book,
            Projects projects,
            ProjectOutlook outlook,
            Journal journal,
            GateRoles roles,
            BackgroundTasks tasks,
            GateRules rules) {
        this.rules = rules;
        this.tasks = tasks;
        this.book = book;
        this.projects = projects;
        this.outlook = outlook;
        this.journal = journal;
        this.roles = roles;
    }

    /**
     * The gate to a stage, as the person who asks may see it.
     *
     * @throws org.plumbrow.web.NotFound
     * @throws org.plumbrow.web.NotForYourRole as {@link Projects#facts}
     */
    public GateView view(UUID projectId, Stage to) {
        return book.open(projects.facts(projectId), to);
    }

    /** For a caller who has read the facts, and so has been let in, already. */
    public GateView view(ProjectFacts facts, Stage to) {
        return book.open(facts, to);
    }

    /** The page of what the item's rule looks at; empty where there is none that the person who asks may open. */
    public Optional<SeenAt> seenAt(GateView gate, ItemView item) {
        return rules.seenAt(item.code(), gate.projectId()).filter(at -> roles.may(gate.branchId(), at.need()));
    }

    /** What the person who asks may do at an item. */
    public ItemRights rights(GateView gate, ItemView item) {
        boolean mayAnswer =
                roles.may(gate.branchId(), May.ANSWER_GATE_ITEM) && roles.mayAnswer(gate.branchId(), item.asked());
        boolean stillOpen = !gate.isPassed();
        boolean conditional = !item.asked().condition().isEverywhere();
        boolean asked = item.applies() == Condition.Applies.ASK;
        boolean dismissible =
                conditional && (asked || (!item.asked().safety() && roles.may(gate.branchId(), May.PASS_GATE)));
        boolean waivable = !item.asked().safety() && roles.may(gate.branchId(), May.WAIVE);
        boolean answered = item.state() == ItemState.WAIVED
                || item.state() == ItemState.NOT_APPLICABLE
                || (item.answer() != null && !item.answer().parts().isEmpty());
        boolean mayTakeBack = item.state() != ItemState.WAIVED || roles.may(gate.branchId(), May.WAIVE);
        return new ItemRights(
                mayAnswer,
                stillOpen && waivable && item.isMissing(),
                stillOpen && mayAnswer && dismissible && !item.state().isSatisfied(),
                stillOpen && mayAnswer && answered && mayTakeBack);
    }

    /** @throws org.plumbrow.web.NotForYourRole if the item is not for the role of the person who asks */
    public void requireAnswer(GateView gate, ItemView item) {
        roles.require(gate.projectId(), May.ANSWER_GATE_ITEM);
        roles.requireItem(gate.branchId(), item.asked());
    }

    /**
     * What a person may do at an item.
     *
     * @param dismiss say that it does not apply
     */
    public record ItemRights(boolean answer, boolean waive, boolean dismiss, boolean reopen) {}

    /** The next gate; empty behind the last one. */
    public Optional<GateView> next(UUID projectId) {
        return next(projects.facts(projectId));
    }

    /** As {@link #view} for work in the background: nobody is asked for. */
    public GateView viewUnchecked(UUID projectId, Stage to) {
        return book.open(projects.factsUnchecked(projectId), to);
    }

    /** As {@link #next(UUID)} for work in the background. */
    public Optional<GateView> nextUnchecked(UUID projectId) {
        return next(projects.factsUnchecked(projectId));
    }

    /** As {@link #next(UUID)} for a caller who has read the facts, and so has been let in, already. */
    Optional<GateView> next(ProjectFacts facts) {
        return Stage.after(facts.stage()).map(to -> book.open(facts, to));
    }

    /**
     * Tells the list of projects anew what is missing at the next gate and who acts. For rooms whose data a rule reads,
     * in the transaction in which these data changed. It waits for its turn before it reads: an answer that is being kept
     * meanwhile would be told as missing.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void lookAgain(UUID projectId) {
        if (!LooksPutOff.takes(projectId)) {
            journal.inTurn(projectId);
            tell(projects.factsUnchecked(projectId), this::next);
        }
    }

    /** Looks again at each project that a long work changes only when it is over: what lay between nobody has seen. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void lookAgainAfter(Runnable work) {
        LooksPutOff.during(work).forEach(this::lookAgain);
    }

    /** As {@link #lookAgain(UUID)} for all projects of a branch, in the background. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void lookAgainAtBranch(UUID branchId) {
        tasks.soon(LookAgain.at(branchId));
    }

    /** As {@link #lookAgain(UUID)} for whoever has read the project, in its turn, and what its branch asks already. */
    void lookAgain(ProjectFacts facts, List<AskedItem> asked) {
        if (!LooksPutOff.takes(facts.id())) {
            tell(facts, project -> Stage.after(project.stage()).map(to -> book.open(project, to, asked)));
        }
    }

    private void tell(ProjectFacts facts, Function<ProjectFacts, Optional<GateView>> next) {
        outlook.nextGate(
                facts.id(), next.apply(facts).map(gate -> told(facts, gate)).orElse(AtTheGate.NOTHING));
    }

    private static AtTheGate told(ProjectFacts facts, GateView gate) {
        List<ItemView> missing =
                gate.missing().stream().sorted(GateBook::bySoonest).toList();
        int blocking = (int) gate.items().stream().filter(ItemView::blocks).count();
        if (missing.isEmpty()) {
            String pass = "Pass the gate to " + GateBook.label(gate.to()) + ".";
            return new AtTheGate(0, blocking, manager(facts), pass, gate.due());
        }
        ItemView first = missing.get(0);
        return new AtTheGate(
                missing.size(), blocking, first.who(), first.asked().words() + ".", first.by());
    }

    private static String manager(ProjectFacts facts) {
        return facts.inCharge(Duty.PROJECT_MANAGER)
                .map(person -> person.name() + ", project manager")
                .orElse("Nobody yet, project manager");
    }
}
