package org.plumbrow.project.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.evidence.EvidenceStore;
import org.plumbrow.evidence.Keeping;
import org.plumbrow.evidence.MadeUpPhoto;
import org.plumbrow.evidence.NewSignature;
import org.plumbrow.evidence.Upload;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.project.Stage;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

/** Walks a project along the legal road: answers each item through the service and passes each gate. */
@Component
public class GateRoad {

    private static final byte[] PDF = "%PDF-1.4 made up for a test".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] PHOTO = MadeUpPhoto.jpeg(160, 120);

    private final TestWorld world;
    private final Gates gates;
    private final GateAnswers answers;
    private final GatePassing passing;
    private final Projects projects;
    private final EvidenceStore evidence;
    private final ObjectProvider<Preparation> preparations;

    GateRoad(
            TestWorld world,
            Gates gates,
            GateAnswers answers,
            GatePassing passing,
            Projects projects,
            EvidenceStore evidence,
            ObjectProvider<Preparation> preparations) {
        this.world = world;
        this.gates = gates;
        this.answers = answers;
        this.passing = passing;
        this.projects = projects;
        this.evidence = evidence;
        this.preparations = preparations;
    }

    /**
     * Brings about what a room's rules look for at a gate (a booked window, a day log), so that the road goes on. A room
     * with a {@link GateRule} that would hold a fixture up supplies such a bean beside its tests.
     */
    public interface Preparation {
        Stage before();

        /** Runs without anybody signed in. */
        void prepare(TestBranch branch, UUID projectId);
    }

    /** Evidence of the project to answer with. */
    public record Papers(UUID photo, UUID document, UUID signature) {}

    /** Passes every gate up to this stage, each on the day that the branch's clock shows. */
    public void walk(TestBranch branch, UUID projectId, Stage to) {
        Papers papers = papers(branch, projectId);
        for (Stage stage : Stage.values()) {
            if (stage.isReachedAt(to) && !stage.isReachedAt(reached(branch, projectId))) {
                answerAll(branch, projectId, stage, papers);
                Optional<?> no = world.as(branch.projectManager(), () -> passing.pass(projectId, stage, today()));
                assertThat(no).as("gate to " + stage).isEmpty();
            }
        }
    }

    /** Answers everything that keeps a gate shut, so that it is open and not yet passed. */
    public void answerAll(TestBranch branch, UUID projectId, Stage stage) {
        answerAll(branch, projectId, stage, papers(branch, projectId));
    }

    private void answerAll(TestBranch branch, UUID projectId, Stage stage, Papers papers) {
        preparations
                .orderedStream()
                .filter(room -> room.before() == stage)
                .forEach(room -> room.prepare(branch, projectId));
        Visitor manager = branch.manager();
        ProjectFacts facts = world.as(manager, () -> projects.facts(projectId));
        GateView gate = world.as(manager, () -> gates.view(projectId, stage));
        List<ItemAnswer> given = gate.missing().stream()
                .map(item -> new ItemAnswer(item.code(), item.version(), parts(item, facts, papers)))
                .filter(answer -> !answer.parts().isEmpty())
                .toList();
        if (!given.isEmpty()) {
            assertThat(world.as(manager, () -> answers.answer(projectId, given)))
                    .isEmpty();
        }
        // What a rule breaks and nobody answers by hand is let go by the manager, as in the house; safety never is.
        world.as(manager, () -> gates.view(projectId, stage)).missing().stream()
                .filter(item -> !item.asked().safety())
                .forEach(item -> world.as(
                        manager, () -> answers.waive(projectId, item.code(), item.version(), "made up for a test")));
    }

    /** What somebody gives at an item so that it is done. */
    static List<Given> parts(ItemView item, ProjectFacts facts, Papers papers) {
        List<Given> parts = new ArrayList<>();
        for (AnswerKind kind : item.lacking()) {
            switch (kind) {
                case CONFIRMATION -> parts.add(Given.confirm());
                case READING -> readings(item.asked(), facts, parts);
                case PHOTO -> photos(item.asked(), papers.photo(), parts);
                case DOCUMENT -> parts.add(Given.document(papers.document()));
                case DATE -> parts.add(Given.date(today()));
                case SIGNATURE -> parts.add(Given.signature(papers.signature()));
                case COMPUTED -> throw new IllegalStateException("nobody gives what is computed");
            }
        }
        return parts;
    }

    private static void readings(AskedItem asked, ProjectFacts facts, List<Given> parts) {
        for (int n = 1; n <= asked.least(); n++) {
            if (asked.readsFigures()) {
                parts.add(Given.reading(within(asked), "place " + n, ""));
            } else {
                // The numbers that the contract's papers show are those of the site.
                String meters = String.join(", ", facts.site().meterNumbers());
                parts.add(Given.reading(meters.isEmpty() ? "as on the sheet" : meters));
            }
        }
    }

    private static void photos(AskedItem asked, UUID photo, List<Given> parts) {
        for (int n = 1; n <= asked.least(); n++) {
            parts.add(Given.photo(photo));
        }
    }

    private static BigDecimal within(AskedItem asked) {
        BigDecimal low = asked.low();
        BigDecimal high = asked.high();
        if (low != null) {
            return high == null ? low : low.add(high).divide(new BigDecimal(2));
        }
        return high == null ? BigDecimal.TEN : high;
    }

    public Papers papers(TestBranch branch, UUID projectId) {
        return world.as(branch.manager(), () -> {
            var by = branch.manager().actor();
            return new Papers(
                    id(evidence.keep(branch.id(), projectId, new Upload("made-up.jpg", PHOTO, ""), by)),
                    id(evidence.keep(branch.id(), projectId, new Upload("made-up.pdf", PDF, ""), by)),
                    id(evidence.sign(
                            branch.id(),
                            projectId,
                            new NewSignature("Alix Moran", "engineer", "I saw it.", null),
                            by)));
        });
    }

    private static UUID id(Keeping kept) {
        return ((Keeping.Kept) kept).evidence().id();
    }

    private @Nullable Stage reached(TestBranch branch, UUID projectId) {
        return world.as(branch.manager(), () -> projects.facts(projectId)).stage();
    }

    private static LocalDate today() {
        return LocalDate.of(2027, 3, 1);
    }
}
