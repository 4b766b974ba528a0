package org.plumbrow.status.told;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.database.BranchWall;
import org.plumbrow.database.Ids;
import org.plumbrow.notice.NoticeKind;
import org.plumbrow.notice.NoticeLine;
import org.plumbrow.notice.NoticeNotSent;
import org.plumbrow.notice.Outbox;
import org.plumbrow.project.JournalReader;
import org.plumbrow.project.ProjectFixture;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.transaction.support.TransactionTemplate;

/** A letter that did not leave is not lost silently. */
@PlumbrowTest
class UndeliveredNoticesTest {

    @Autowired
    ApplicationEventPublisher events;

    @Autowired
    ProjectFixture projects;

    @Autowired
    Outbox outbox;

    @Autowired
    JournalReader journal;

    @Autowired
    TestWorld world;

    @Autowired
    TransactionTemplate transaction;

    private TestBranch branch;
    private UUID project;

    @BeforeEach
    void aProject() {
        branch = world.branch();
        project = projects.aHomeRoof().in(branch).build();
    }

    /** As the postman says it: nobody is signed in, and the rows of every branch are in reach. */
    private void notSent(NoticeKind kind) {
        BranchWall.everywhere(() -> transaction.executeWithoutResult(status -> events.publishEvent(new NoticeNotSent(
                Ids.next(),
                kind,
                branch.id(),
                project,
                "Power off Friday, Alder Lane 12",
                "The mail server did not take it."))));
    }

    private List<NoticeLine> letters() {
        return world.as(branch.manager(), () -> outbox.ofProject(project));
    }

    @Test
    void whoeverIsInChargeIsToldWhatDidNotLeaveWhyAndWhatToDo() {
        notSent(NoticeKind.CUSTOMER);
        assertThat(letters()).singleElement().satisfies(letter -> {
            assertThat(letter.kind()).isEqualTo(NoticeKind.STAFF);
            assertThat(letter.toAddress()).isEqualTo(branch.projectManager().email());
            assertThat(letter.subject()).isEqualTo("Not sent to the customer: Power off Friday, Alder Lane 12");
        });
        String line = world.as(branch.manager(), () -> journal.newest(project, 1))
                .get(0)
                .toString();
        assertThat(line).contains("A letter to the customer did not leave.").doesNotContain("Alder Lane");
    }

    @Test
    void theUtilitysLetterCountsAsMuch() {
        notSent(NoticeKind.UTILITY);
        assertThat(letters())
                .singleElement()
                .satisfies(letter -> assertThat(letter.subject()).startsWith("Not sent to the utility: "));
    }

    @Test
    void aLetterToOurOwnPeopleThatDoesNotLeaveMakesNoOtherOne() {
        notSent(NoticeKind.STAFF);
        assertThat(letters()).isEmpty();
    }
}
