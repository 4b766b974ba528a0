package org.plumbrow.crew;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.calc.duration.Skill;
import org.plumbrow.database.BranchWall;
import org.plumbrow.database.Ids;
import org.plumbrow.web.ConstraintSentences;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.NotForYourRole;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataIntegrityViolationException;

/** Crews and shared machines as the plan reads them, and what the database refuses. */
@PlumbrowTest
class CrewsTest {

    private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);

    @Autowired
    Crews crews;

    @Autowired
    CrewEditing editing;

    @Autowired
    EquipmentEditing equipment;

    @Autowired
    ConstraintSentences sentences;

    @Autowired
    TestWorld world;

    private TestBranch branch;

    @BeforeEach
    void open() {
        branch = world.branch();
    }

    @Test
    void aCrewIsReadAsItWasWritten() {
        UUID id = crew("Crew 1", branch.crewLead().personId());
        CrewFacts crew = world.as(branch.manager(), () -> crews.crew(id)).orElseThrow();
        assertThat(crew.size()).isEqualTo(4);
        assertThat(crew.skills()).containsExactlyInAnyOrder(Skill.INSTALLER, Skill.ROOF);
        assertThat(crew.leadName()).isEqualTo("Jory");
        assertThat(crew.worksOn(MONDAY)).isTrue();
        assertThat(crew.worksOn(MONDAY.minusDays(1))).isFalse();
        assertThat(crews.crewsLedBy(branch.id(), branch.crewLead().personId())).isEmpty(); // no scope, no rows
        assertThat(BranchWall.within(
                        branch.id(),
                        () -> crews.crewsLedBy(branch.id(), branch.crewLead().personId())))
                .containsExactly(id);
    }

    @Test
    void aPlanReadsTheWholeBranchInFiveQueriesHoweverManyCrewsThereAre() {
        for (int i = 1; i <= 8; i++) {
            UUID id = crew("Crew " + i, branch.crewLead().personId());
            away(id, MONDAY.plusDays(i), MONDAY.plusDays(i));
            machine("Lift " + i);
        }
        assertThat(Queries.count(() -> world.as(branch.manager(), () -> crews.of(branch.id(), MONDAY))))
                .isEqualTo(5);
        CrewsOfBranch all = world.as(branch.manager(), () -> crews.of(branch.id(), MONDAY.plusDays(5)));
        assertThat(all.crews()).hasSize(8);
        assertThat(all.equipment()).hasSize(8);
        assertThat(all.crews()).flatExtracting(CrewFacts::away).hasSize(4);
    }

    @Test
    void aCrewIsNeverAwayTwiceAtATime() {
        UUID id = crew("Crew 1", null);
        assertThat(away(id, MONDAY, MONDAY.plusDays(2))).isEmpty();
        DataIntegrityViolationException refused = (DataIntegrityViolationException)
                catchThrowable(() -> away(id, MONDAY.plusDays(2), MONDAY.plusDays(3)));
        assertThat(sentences.refusal(refused, "firstDay"))
                .isEqualTo(new Refusal(
                        "firstDay",
                        "The crew is already away in a part of this time. Choose other days,"
                                + " or remove the other absence first."));
        assertThat(away(id, MONDAY.plusDays(3), MONDAY.plusDays(3))).isEmpty();
    }

    @Test
    void theAfternoonIsFreeWhenOnlyTheMorningIsTaken() {
        UUID id = crew("Crew 1", null);
        assertThat(away(id, new AwayTime(MONDAY, Half.MORNING, MONDAY, Half.MORNING, AwayReason.TRAINING, "")))
                .isEmpty();
        assertThat(away(id, new AwayTime(MONDAY, Half.AFTERNOON, MONDAY, Half.AFTERNOON, AwayReason.ILLNESS, "")))
                .isEmpty();
        List<Away> times =
                world.as(branch.manager(), () -> crews.crew(id)).orElseThrow().away();
        assertThat(times).extracting(Away::reason).containsExactly(AwayReason.TRAINING, AwayReason.ILLNESS);
    }

    @Test
    void anAbsenceThatEndsBeforeItBeginsIsRefusedInWords() {
        UUID id = crew("Crew 1", null);
        assertThat(away(id, MONDAY, MONDAY.minusDays(1)))
                .contains(new Refusal("lastDay", "The absence ends before it begins. Choose a later last day."));
    }

    @Test
    void aMachineIsNeverAwayTwiceAtATime() {
        UUID id = machine("Post driver");
        AwayTime time = new AwayTime(MONDAY, Half.MORNING, MONDAY, Half.AFTERNOON, AwayReason.REPAIR, "");
        assertThat(world.as(branch.manager(), () -> equipment.away(Ids.next(), id, time)))
                .isEmpty();
        Throwable refused =
                catchThrowable(() -> world.as(branch.manager(), () -> equipment.away(Ids.next(), id, time)));
        assertThat(ConstraintSentences.constraint(refused)).contains("equipment_absence_overlaps");
    }

    @Test
    void anOlderVersionIsNotWrittenOverANewerOne() {
        UUID id = crew("Crew 1", null);
        CrewTerms larger = new CrewTerms("Crew 1", 5, null, Set.of(Skill.ROOF), null, MONDAY, null);
        assertThat(world.as(branch.manager(), () -> editing.change(id, 0, larger)))
                .isEmpty();
        assertThatThrownBy(() -> world.as(branch.manager(), () -> editing.change(id, 0, larger)))
                .isInstanceOf(EditedMeanwhile.class);
    }

    @Test
    void aLeadIsSomebodyOfTheBranch() {
        UUID stranger = world.branch().crewLead().personId();
        CrewTerms terms = new CrewTerms("Crew 1", 4, null, Set.of(Skill.ROOF), stranger, MONDAY, null);
        assertThat(world.as(branch.manager(), () -> editing.add(Ids.next(), branch.id(), terms)))
                .contains(new Refusal("leadPersonId", "This person is not in the branch. Choose somebody who is."));
    }

    @Test
    void onlyManagersChangeCrewsAndOthersDoNotSeeThem() {
        UUID id = crew("Crew 1", null);
        CrewTerms terms = new CrewTerms("Crew 1", 5, null, Set.of(Skill.ROOF), null, MONDAY, null);
        assertThatThrownBy(() -> world.as(branch.projectManager(), () -> editing.change(id, 0, terms)))
                .isInstanceOf(NotForYourRole.class);
        TestBranch other = world.branch();
        assertThatThrownBy(() -> world.as(other.manager(), () -> editing.change(id, 0, terms)))
                .isInstanceOf(NotFound.class);
        assertThat(world.as(other.manager(), () -> crews.crew(id))).isEmpty();
    }

    private UUID crew(String name, UUID lead) {
        UUID id = Ids.next();
        CrewTerms terms = new CrewTerms(name, 4, null, Set.of(Skill.INSTALLER, Skill.ROOF), lead, MONDAY, null);
        assertThat(world.as(branch.manager(), () -> editing.add(id, branch.id(), terms)))
                .isEmpty();
        return id;
    }

    private UUID machine(String name) {
        UUID id = Ids.next();
        EquipmentTerms terms = new EquipmentTerms(EquipmentKind.LIFT, name, MONDAY, null);
        assertThat(world.as(branch.manager(), () -> equipment.add(id, branch.id(), terms)))
                .isEmpty();
        return id;
    }

    private Optional<Refusal> away(UUID crewId, LocalDate first, LocalDate last) {
        return away(crewId, new AwayTime(first, Half.MORNING, last, Half.AFTERNOON, AwayReason.HOLIDAY, ""));
    }

    private Optional<Refusal> away(UUID crewId, AwayTime time) {
        return world.as(branch.manager(), () -> editing.away(Ids.next(), crewId, time));
    }
}
