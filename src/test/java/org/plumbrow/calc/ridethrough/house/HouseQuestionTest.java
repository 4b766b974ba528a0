package org.plumbrow.calc.ridethrough.house;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.ridethrough.Caution;
import org.plumbrow.calc.ridethrough.Limit;
import org.plumbrow.calc.ridethrough.Limit.Kind;
import org.plumbrow.calc.ridethrough.RideThrough;

class HouseQuestionTest {

    private static final LivestockHouse BROILERS =
            LivestockHouse.closed("house 1", new Animal.Broiler(2.5), 24_000, 5990, 1200, 0.5);

    private static HouseQuestion asking(LivestockHouse house, HouseDoubts doubts, boolean guessed) {
        return new HouseQuestion(
                house,
                Outdoors.shaded(30, 60),
                HouseAir.of(29, 60),
                HouseLimits.usual(house.animal().species()),
                doubts,
                guessed,
                HouseQuestion.USUAL_HORIZON_MINUTES);
    }

    @Test
    void theAlarmGoesByTheShortEndAndHalfOfItIsPlanned() {
        RideThrough answer = asking(BROILERS, HouseDoubts.USUAL, false).answer().asGiven();
        assertThat(answer.shortEnd().orElseThrow()).isLessThan(answer.likely().orElseThrow());
        assertThat(answer.likely().orElseThrow()).isLessThan(answer.longEnd().orElseThrow());
        assertThat(answer.planned().orElseThrow()).isCloseTo(answer.shortEnd().orElseThrow() / 2, within(1e-12));
        assertThat(answer.binding().orElseThrow().limit().kind()).isEqualTo(Kind.HEAT);
    }

    @Test
    void withoutDoubtThereIsOneFigure() {
        RideThrough answer = asking(BROILERS, HouseDoubts.NONE, false).answer().asGiven();
        assertThat(answer.shortEnd()).isEqualTo(answer.likely()).isEqualTo(answer.longEnd());
    }

    @Test
    void moreDoubtNeverMovesTheLikelyAndWidensTheRange() {
        RideThrough sure = asking(BROILERS, new HouseDoubts(0.05, 0.1, 0.1, 1, 0.5), false)
                .answer()
                .asGiven();
        RideThrough unsure = asking(BROILERS, HouseDoubts.USUAL, false).answer().asGiven();
        assertThat(unsure.likely()).isEqualTo(sure.likely());
        assertThat(unsure.shortEnd().orElseThrow()).isLessThan(sure.shortEnd().orElseThrow());
        assertThat(unsure.longEnd().orElseThrow()).isGreaterThan(sure.longEnd().orElseThrow());
    }

    @Test
    void theAirAloneIsAlwaysBesideIt() {
        HouseQuestion.Answer answer = asking(BROILERS, HouseDoubts.USUAL, false).answer();
        assertThat(answer.airAlone().shortEnd().orElseThrow())
                .isCloseTo(answer.asGiven().shortEnd().orElseThrow() / 2, within(1e-3));
    }

    @Test
    void youngAnimalsCanBindByColdAndTheUsualLimitsStay() {
        LivestockHouse chicks = LivestockHouse.closed("house 1", new Animal.Broiler(0.05), 24_000, 5990, 1200, 0.3);
        RideThrough answer = new HouseQuestion(
                        chicks,
                        Outdoors.shaded(-5, 60),
                        HouseAir.of(32, 60),
                        HouseLimits.usual(Species.BROILERS).alsoCold(28, "common practice"),
                        HouseDoubts.NONE,
                        false,
                        1440)
                .answer()
                .asGiven();
        assertThat(answer.times()).hasSize(3);
        assertThat(answer.binding().orElseThrow().limit().kind()).isEqualTo(Kind.COLD);
    }

    @Test
    void cautionsAreDataAndGuessesAreSaid() {
        assertThat(asking(BROILERS, HouseDoubts.USUAL, true).answer().asGiven().cautions())
                .contains(Caution.PLANNING_AID, Caution.ANIMALS, Caution.AIR_MASS, Caution.GUESSED)
                .doesNotContain(Caution.CURTAINS);
        assertThat(asking(BROILERS.opened(15), HouseDoubts.USUAL, false)
                        .answer()
                        .asGiven()
                        .cautions())
                .contains(Caution.CURTAINS)
                .doesNotContain(Caution.GUESSED);
    }

    @Test
    void everyUsualLimitNamesItsSource() {
        for (Species species : Species.values()) {
            assertThat(HouseLimits.usual(species).limits())
                    .hasSize(2)
                    .allMatch(limit -> limit.source().length() > 10);
        }
        assertThatThrownBy(() -> new Limit(Kind.HEAT, 36, " ")).hasMessageContaining("names no source");
    }

    @Test
    void inputsHaveLimits() {
        assertThatThrownBy(() -> BROILERS.withMassFactor(0.5)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> BROILERS.opened(61)).hasMessageContaining("air changes");
        assertThatThrownBy(() -> new Outdoors(61, 50, 0)).hasMessageContaining("outdoor temperature");
        assertThatThrownBy(() -> new HouseDoubts(0.6, 0, 0, 0, 0)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> new Envelope.Surface("roof", 100, 0.01)).hasMessageContaining("U-value of roof");
    }

    /** 40 by 500 ft, 9 ft walls: 12.2 x 152.4 x 2.74 m, walls 1.0, ceiling 0.3 W/(m2 K): 902 + 558 W/K by hand. */
    @Test
    void anEnvelopeAddsItsSurfaces() {
        Envelope box = Envelope.ofBox(152.4, 12.2, 2.74, 1.0, 0.3);
        assertThat(box.uaWPerK()).isCloseTo(902 + 558, within(1.0));
    }
}
