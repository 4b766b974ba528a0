package org.plumbrow.calc.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.plumbrow.calc.electrical.Service.SINGLE_PHASE_120_240;
import static org.plumbrow.calc.electrical.Service.WYE_208_120;
import static org.plumbrow.calc.electrical.Service.WYE_480_277;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.electrical.Service.Band;
import org.plumbrow.calc.electrical.Service.Limits;

/** The table of the standard, and worked readings of common services. */
class ServiceVoltageTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/electrical/service-voltage.csv", useHeadersInDisplayName = true)
    void theLimitsAreThoseOfTheTable(
            String service, String pair, double aLeastV, double aMostV, double bLeastV, double bMostV) {
        assertThat(Service.valueOf(service).pair(pair).orElseThrow().limits())
                .isEqualTo(new Limits(aLeastV, aMostV, bLeastV, bMostV));
    }

    @Test
    void limitsAreIncluded() {
        Limits line = new Limits(114, 126, 110, 127);
        assertThat(line.band(114)).isEqualTo(Band.A);
        assertThat(line.band(126)).isEqualTo(Band.A);
        assertThat(line.band(113.9)).isEqualTo(Band.B);
        assertThat(line.band(127)).isEqualTo(Band.B);
        assertThat(line.band(109.9)).isEqualTo(Band.OUTSIDE);
        assertThat(line.band(127.1)).isEqualTo(Band.OUTSIDE);
    }

    @Test
    void threeEvenLegsPassWithTheirUnbalance() {
        var result = ServiceVoltage.judge(WYE_208_120, Map.of("A-N", 118.4, "B-N", 119.1, "C-N", 117.2));
        assertThat(result.worst()).isEqualTo(Band.A);
        assertThat(result.unbalancePercent().orElseThrow()).isCloseTo(0.874, within(0.001));
        assertThat(result.missing()).extracting(Service.Pair::code).containsExactly("A-B", "A-C", "B-C");
    }

    @Test
    void belowRangeAIsARemarkAndBelowRangeBIsOutside() {
        assertThat(ServiceVoltage.judge(WYE_480_277, Map.of("A-B", 452.0, "B-C", 455.0, "A-C", 449.0))
                        .worst())
                .isEqualTo(Band.B);
        assertThat(ServiceVoltage.judge(WYE_480_277, Map.of("A-B", 437.0)).worst())
                .isEqualTo(Band.OUTSIDE);
    }

    @Test
    void aLegNearTwoHundredAndTenIsAHighLeg() {
        var result = ServiceVoltage.judge(
                WYE_208_120,
                Map.of("A-N", 121.0, "B-N", 210.0, "C-N", 120.0, "A-B", 241.0, "B-C", 242.0, "A-C", 240.0));
        assertThat(result.warning().orElseThrow()).startsWith("Leg B reads as the high leg");
    }

    @Test
    void legsThatDifferByMoreThanTenVoltsMayBeAnOpenNeutral() {
        var result = ServiceVoltage.judge(SINGLE_PHASE_120_240, Map.of("A-N", 131.0, "B-N", 109.0, "A-B", 240.0));
        assertThat(result.warning())
                .contains("The legs differ by 22 V: the neutral may be open. Stop, and call the utility at once.");
        assertThat(ServiceVoltage.judge(SINGLE_PHASE_120_240, Map.of("A-N", 125.0, "B-N", 115.0))
                        .warning())
                .isEmpty();
        assertThat(ServiceVoltage.judge(SINGLE_PHASE_120_240, Map.of("A-N", 125.1, "B-N", 115.0))
                        .warning())
                .isPresent();
    }

    @Test
    void aReadingSaysWhereItLies() {
        var result = ServiceVoltage.judge(SINGLE_PHASE_120_240, Map.of("A-N", 121.0, "B-N", 131.0, "A-B", 253.0));
        assertThat(result.readings())
                .extracting(ServiceVoltage.Judged::sentence)
                .containsExactly(
                        "Leg A to neutral: 121.0 V lies within 114 to 126 V.",
                        "Leg B to neutral: 131.0 V is outside 110 to 127 V.",
                        "Leg A to leg B: 253.0 V is outside 228 to 252 V, within the wider 220 to 254 V.");
    }

    @Test
    void whatNoMeterCanReadIsRefused() {
        assertThatThrownBy(() -> ServiceVoltage.judge(SINGLE_PHASE_120_240, Map.of("A-N", 1000.1)))
                .isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> ServiceVoltage.judge(SINGLE_PHASE_120_240, Map.of("A-N", Double.NaN)))
                .isInstanceOf(Range.OutOfRange.class);
    }
}
