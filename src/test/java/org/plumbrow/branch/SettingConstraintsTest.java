package org.plumbrow.branch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.crew.CrewSamples;
import org.plumbrow.database.BranchWall;
import org.plumbrow.web.ConstraintSentences;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.MessageSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** What the database itself refuses in the rows of settings, crews and machines, whoever asks. */
@PlumbrowTest
class SettingConstraintsTest {

    private static final String TABLES = "'utility', 'utility_slot', 'closed_day', 'permit_office', 'work_rate',"
            + " 'fixed_time', 'wait_time', 'weather_loss', 'branch_setting', 'branch_change', 'crew', 'crew_absence',"
            + " 'shared_equipment', 'equipment_absence'";

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    TestWorld world;

    @Autowired
    BranchSamples samples;

    @Autowired
    CrewSamples crews;

    @Autowired
    MessageSource messages;

    private TestBranch branch;

    @BeforeEach
    void open() {
        branch = world.branch();
        samples.utility(branch, "Valley Electric");
        samples.permitOffice(branch, "Quillback County");
        UUID crew = crews.crew(branch, "Crew 1", null);
        crews.away(branch, crew, LocalDate.of(2027, 3, 8), LocalDate.of(2027, 3, 9));
        crews.machine(branch, EquipmentKind.LIFT, "Lift");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "branch_setting_weekdays | branch_setting | working_weekdays = '-------'",
                "branch_setting_weekdays | branch_setting | working_weekdays = 'MTWTFS'",
                "branch_setting_hours_in_order | branch_setting | morning_end = '06:00'",
                "branch_setting_hours_in_order | branch_setting | afternoon_start = '11:00'",
                "branch_setting_yard_on_earth | branch_setting | yard_latitude_deg = 41.9",
                "branch_setting_yard_on_earth | branch_setting | yard_latitude_deg = 91, yard_longitude_deg = 0",
                "branch_setting_travel_speed | branch_setting | travel_speed_mph = 0",
                "branch_setting_travel_factor | branch_setting | travel_road_factor = 0.9",
                "utility_name_given | utility | name = ' '",
                "utility_notice | utility | notice_working_days = 61",
                "utility_disconnect | utility | disconnect_most_ft = 0",
                "utility_appointment_weekdays | utility | appointment_weekdays = ''",
                "utility_working_weekdays | utility | working_weekdays = '-------'",
                "utility_slot_in_order | utility_slot | off_to = off_from",
                "utility_slot_in_order | utility_slot | back_by = off_to",
                "permit_office_name_given | permit_office | name = ''",
                "permit_office_edition | permit_office | code_edition = 'NEC_2018'",
                "permit_office_permit_wait | permit_office | permit_least_days = 1",
                "permit_office_permit_wait | permit_office | permit_least_days = 5, permit_usual_days = 4, permit_most_days = 9",
                "permit_office_inspection_wait | permit_office | inspection_usual_days = 3, inspection_most_days = 4",
                "work_rate_in_order | work_rate | typical_per_day = high_per_day + 1",
                "work_rate_in_order | work_rate | low_per_day = 0",
                "work_rate_crew | work_rate | crew_least = crew_most + 1",
                "work_rate_set_up | work_rate | set_up_days = -1",
                "fixed_time_in_order | fixed_time | low_days = high_days + 1",
                "fixed_time_people | fixed_time | people = 0",
                "wait_time_in_order | wait_time | usual_days = most_days + 1",
                "weather_loss_months | weather_loss | lost_half_days = '{0,0}'",
                "weather_loss_amount | weather_loss | lost_half_days[3] = 41",
                "crew_name_given | crew | name = ''",
                "crew_size | crew | size = 21",
                "crew_electrical_people | crew | electrical_people = size + 1",
                "crew_electrical_people | crew | electrical_people = -1",
                "crew_skills | crew | skills = '{}'",
                "crew_skills | crew | skills = '{JUGGLING}'",
                "crew_days_in_order | crew | until_day = from_day - 1",
                "crew_absence_halves | crew_absence | first_half = 'NIGHT'",
                "crew_absence_reason | crew_absence | reason = 'REPAIR'",
                "crew_absence_note_short | crew_absence | note = repeat('x', 201)",
                "shared_equipment_name_given | shared_equipment | name = ''",
                "shared_equipment_kind | shared_equipment | kind = 'HAMMER'",
                "shared_equipment_days_in_order | shared_equipment | until_day = from_day - 1"
            })
    void theDatabaseRefusesWhatMustNeverBe(String constraint, String table, String change) {
        assertThat(refused("update " + table + " set " + change + " where branch_id = :branch"))
                .isEqualTo(constraint);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "utility_name_taken | utility",
                "permit_office_name_taken | permit_office",
                "crew_name_taken | crew",
                "shared_equipment_name_taken | shared_equipment"
            })
    void aNameStandsOnceInABranchAndMayStandInAnother(String constraint, String table) {
        assertThat(refused("insert into " + table + " select (jsonb_populate_record(t, jsonb_build_object('id',"
                        + " gen_random_uuid()))).* from " + table + " t where branch_id = :branch"))
                .isEqualTo(constraint);
        open();
    }

    @Test
    void theLogIsNeverRewritten() {
        Throwable refused =
                catchThrowable(() -> inBranch("update branch_change set now = 'x' where branch_id = :branch"));
        assertThat(refused).rootCause().hasMessageContaining("branch_change is append-only: update refused");
        Throwable kept = catchThrowable(() -> inBranch("delete from branch_change where branch_id = :branch"));
        assertThat(kept).rootCause().hasMessageContaining("branch_change is append-only: delete refused");
    }

    @Test
    void everyRuleThatTwoPeopleCanBreakAtOnceHasItsSentence() {
        List<String> names = BranchWall.everywhere(() -> transaction.execute(status -> jdbc.sql(
                        "select conname from pg_constraint where contype in ('u', 'x') and conrelid::regclass::text in ("
                                + TABLES + ")")
                .query(String.class)
                .list()));
        assertThat(names)
                .hasSizeGreaterThanOrEqualTo(8)
                .allSatisfy(name -> assertThat(messages.getMessage("constraint." + name, null, "", Locale.US))
                        .as(name)
                        .endsWith("."));
    }

    private String refused(String change) {
        Throwable refused = catchThrowable(() -> inBranch(change));
        assertThat(refused).as(change).isNotNull();
        return ConstraintSentences.constraint(refused).orElse(refused.getMessage());
    }

    private void inBranch(String change) {
        BranchWall.within(
                branch.id(),
                () -> transaction.execute(
                        status -> jdbc.sql(change).param("branch", branch.id()).update()));
    }
}
