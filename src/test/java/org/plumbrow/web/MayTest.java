package org.plumbrow.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MayTest {

    @ParameterizedTest
    @EnumSource(May.class)
    void aFirmOwnerMayDoEverythingAndNobodyWithoutARoleAnything(May act) {
        assertThat(act.allows(List.of(Role.OWNER))).isTrue();
        assertThat(act.allows(List.of())).isFalse();
    }

    @Test
    void onlyManagersWaivePublishChangeSettingsAndInvite() {
        for (May act : List.of(May.WAIVE, May.PUBLISH_PLAN, May.CHANGE_SETTINGS, May.INVITE)) {
            assertThat(act.allows(List.of(Role.MANAGER))).isTrue();
            assertThat(act.allows(List.of(Role.PROJECT_MANAGER, Role.DESIGNER, Role.CREW_LEAD)))
                    .isFalse();
        }
    }

    @Test
    void designersAndCrewLeadsSeeNoMoney() {
        assertThat(May.SEE_MONEY.allows(List.of(Role.DESIGNER, Role.CREW_LEAD))).isFalse();
    }

    @Test
    void whoMayIsASentencesSubject() {
        assertThat(May.WAIVE.who()).isEqualTo("Branch managers");
        assertThat(May.PASS_GATE.who()).isEqualTo("Branch managers and project managers");
        assertThat(May.RUN_FIRM.who()).isEqualTo("Firm owners");
    }
}
