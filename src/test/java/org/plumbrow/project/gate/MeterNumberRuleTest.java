package org.plumbrow.project.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Meter numbers are compared as people write them. */
class MeterNumberRuleTest {

    @Test
    void blanksAndDashesDoNotCount() {
        assertThat(MeterNumberRule.judge(List.of("55 120-7K"), "Account 900, meter 551207k"))
                .isEqualTo(new Finding.Satisfied("The site’s meter number is the contract’s."));
    }

    @Test
    void everyMeterOfTheSiteCounts() {
        assertThat(MeterNumberRule.judge(List.of("700411", "700412"), "700411"))
                .isEqualTo(new Finding.Broken(
                        "Meter number ending in 0412 is not in the contract’s papers.",
                        "Read the meter again; correct the site’s number, or ask the customer for the right bill."));
        assertThat(MeterNumberRule.judge(List.of("700411", "700412"), "700411 and 700412")
                        .sentence())
                .isEqualTo("All 2 meter numbers of the site are the contract’s.");
    }

    @Test
    void withoutOneOfTheTwoNothingCanBeTold() {
        assertThat(MeterNumberRule.judge(List.of("700411"), " ")).isInstanceOf(Finding.CannotTell.class);
        assertThat(MeterNumberRule.judge(List.of(), "700411")).isInstanceOf(Finding.CannotTell.class);
    }
}
