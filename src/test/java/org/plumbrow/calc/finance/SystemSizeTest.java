package org.plumbrow.calc.finance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.Range;

/** Sizes for a target, with limits and strings. Worked examples: a farm and a home. */
class SystemSizeTest {

    private static SystemSize size(
            double use, double target, double yield, double moduleW, Stringing strings, SizeLimit... limits) {
        return SystemSize.of(new SizeQuestion(use, target, yield, moduleW, strings, 1.2, List.of(limits)));
    }

    @Test
    void aFarmGetsTheWholeModulesNearestItsTargetWithItsNeighbours() {
        SystemSize farm = size(148_200, 0.9, 1340, 550, Stringing.NONE);
        assertThat(farm.question().exactKwDc()).isCloseTo(99.537, within(0.0005));
        assertThat(farm.chosen().modules()).isEqualTo(181);
        assertThat(farm.chosen().kwDc()).isCloseTo(99.55, within(1e-9));
        assertThat(farm.chosen().kwh()).isCloseTo(133_397, within(0.5));
        assertThat(farm.chosen().offset().orElseThrow()).isCloseTo(0.9001, within(0.00005));
        assertThat(farm.smaller().orElseThrow().modules()).isEqualTo(180);
        assertThat(farm.smaller().orElseThrow().offset().orElseThrow()).isCloseTo(0.8951, within(0.00005));
        assertThat(farm.larger().orElseThrow().modules()).isEqualTo(182);
        assertThat(farm.binding()).isEmpty();
        assertThat(farm.why()).isEqualTo("The whole number of modules nearest to 90.0 % of the use.");
    }

    @Test
    void aHomeOfTheWorkedExample() {
        SizeOption home = size(11_400, 1, 1250, 400, Stringing.NONE).chosen();
        assertThat(home.modules()).isEqualTo(23);
        assertThat(home.kwDc()).isCloseTo(9.2, within(1e-9));
        assertThat(home.offset().orElseThrow()).isCloseTo(1.0088, within(0.00005));
    }

    @Test
    void aLimitIsKeptAndNamedAndTheLargerOneSaysWhatForbidsIt() {
        SizeLimit utility = new SizeLimit(SizeLimit.Kind.KW_AC, 40, "Utility");
        SystemSize farm = size(148_200, 1, 1340, 550, Stringing.NONE, utility);
        assertThat(farm.chosen().kwAc()).isLessThanOrEqualTo(40);
        assertThat(farm.chosen().modules()).isEqualTo(87);
        assertThat(farm.binding()).contains(utility);
        assertThat(farm.why()).isEqualTo("Utility: at most 40.0 kW AC.");
        assertThat(farm.larger().orElseThrow().forbiddenBy()).contains(utility);
        assertThat(farm.smaller().orElseThrow().forbiddenBy()).isEmpty();
    }

    @Test
    void neverAboveAnOffsetThatPolicySets() {
        SizeLimit policy = new SizeLimit(SizeLimit.Kind.OFFSET, 1, "Branch policy");
        SystemSize home = size(11_400, 1, 1250, 400, Stringing.NONE, policy);
        assertThat(home.chosen().modules()).isEqualTo(22);
        assertThat(home.why()).isEqualTo("Branch policy: at most 100.0 % of the use.");
        // exactly on the limit is allowed
        assertThat(size(10_000, 1, 1250, 400, Stringing.NONE, policy).chosen().modules())
                .isEqualTo(20);
    }

    @Test
    void theTightestOfSeveralLimitsBinds() {
        SystemSize farm = size(
                148_200,
                1,
                1340,
                550,
                Stringing.NONE,
                new SizeLimit(SizeLimit.Kind.KW_DC, 100, "Transformer"),
                new SizeLimit(SizeLimit.Kind.MODULES, 60, "Roof area"),
                new SizeLimit(SizeLimit.Kind.KW_AC, 200, "Utility"));
        assertThat(farm.chosen().modules()).isEqualTo(60);
        assertThat(farm.larger().orElseThrow().forbiddenBy().orElseThrow().whose())
                .isEqualTo("Roof area");
    }

    @Test
    void stringsMayMakeNoNumberNearer() {
        SystemSize size = size(20_000, 1, 1250, 500, new Stringing(14, 18));
        // 32 wanted, two strings of 16
        assertThat(size.chosen().strings()).containsExactly(16, 16);
        SystemSize odd = size(15_000, 1, 1250, 500, new Stringing(14, 18));
        // 24 wanted: 18 or 28 can be made
        assertThat(odd.chosen().modules()).isEqualTo(28);
        assertThat(odd.smaller().orElseThrow().modules()).isEqualTo(18);
        assertThat(odd.why()).isEqualTo("Strings of 14 to 18 modules make no number nearer to 100.0 % of the use.");
    }

    @Test
    void withoutUseThereIsNothingToBuildAndNoOffset() {
        SystemSize none = size(0, 1, 1250, 400, Stringing.NONE);
        assertThat(none.chosen().modules()).isZero();
        assertThat(none.chosen().offset()).isEmpty();
        assertThat(none.smaller()).isEmpty();
        assertThat(none.why()).isEqualTo("There is no use to cover.");
    }

    @Test
    void whenEverySizeIsForbiddenNoneIsChosen() {
        SystemSize size =
                size(20_000, 1, 1250, 500, new Stringing(14, 18), new SizeLimit(SizeLimit.Kind.KW_DC, 5, "Utility"));
        assertThat(size.chosen().modules()).isZero();
        assertThat(size.binding()).isPresent();
    }

    @Test
    void agreesWithTryingEveryCount() {
        Random random = new Random(7);
        for (int round = 0; round < 200; round++) {
            Stringing strings = new Stringing(1 + random.nextInt(16), 16 + random.nextInt(8));
            SizeLimit limit = new SizeLimit(SizeLimit.Kind.MODULES, 20 + random.nextInt(300), "Roof");
            SystemSize size = size(5000 + random.nextInt(150_000), 1, 1250, 450, strings, limit);
            double exact = size.question().exactModules();
            int best = 0;
            for (int count = 0; count <= limit.most(); count++) {
                boolean nearer = Math.abs(count - exact) <= Math.abs(best - exact);
                best = strings.lengths(count).isPresent() && nearer ? count : best;
            }
            assertThat(size.chosen().modules()).isEqualTo(best);
            assertThat(size.chosen().strings().stream().mapToInt(each -> each).sum())
                    .isEqualTo(best);
            assertThat(size.chosen().strings()).allMatch(each -> each >= strings.fewest() && each <= strings.most());
        }
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> size(-1, 1, 1250, 400, Stringing.NONE)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> size(1000, 3, 1250, 400, Stringing.NONE)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> new Stringing(18, 14)).isInstanceOf(Range.OutOfRange.class);
    }
}
