package org.plumbrow.project.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.plumbrow.database.Ids;

/** What stands in another room's data is not asked a second time. */
class RecordedFindingTest {

    private static AskedItem item(String code) {
        return ShippedItems.all().stream()
                .filter(item -> item.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private static Judging.Verdict judged(String code, Finding finding) {
        return Judging.of(item(code), finding, AnswerRow.none(Ids.next()));
    }

    @Test
    void whatTheRoomHoldsIsNotLacking() {
        Judging.Verdict verdict =
                judged("cutover.19", new Finding.Recorded("121 V, 122 V, 243 V.", Set.of(AnswerKind.READING)));
        assertThat(verdict.state()).isEqualTo(ItemState.DONE);
        assertThat(verdict.sentence()).isEqualTo("121 V, 122 V, 243 V.");
    }

    @Test
    void whatTheRoomDoesNotHoldStillIs() {
        Judging.Verdict verdict = judged("cutover.17", new Finding.Recorded("Read.", Set.of(AnswerKind.READING)));
        assertThat(verdict.state().isSatisfied()).isFalse();
        assertThat(verdict.lacking()).isEqualTo(List.of(AnswerKind.SIGNATURE));
    }

    @Test
    void aRuleMayJudgeAnItemThatIsNotComputed() {
        GateRule rule = new GateRule() {
            @Override
            public String item() {
                return "cutover.16";
            }

            @Override
            public Finding check(GateLook look) {
                return new Finding.Broken("Not signed.", "Sign it.");
            }
        };
        assertThat(GateRules.gathered(List.of(rule))).containsKey("cutover.16");
    }
}
