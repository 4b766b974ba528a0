package org.plumbrow.calc.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.plumbrow.calc.Range;

/** Counts worked by hand: (length + gap) / (side + gap), rounded down. */
class ModuleFitTest {

    @Test
    void aModuleOf400WIsAsLongAsItsPowerMakesIt() {
        // 400 / 215 / 1.134
        assertThat(ModuleFit.longSideM(400)).isEqualTo(1.6406, within(1e-4));
    }

    @Test
    void aRoofTakesTheWayThatHoldsMore() {
        // upright 12.02 / 1.154 = 10 and 4.22 / 1.6606 = 2; lying 12.02 / 1.6606 = 7 and 4.22 / 1.154 = 3
        ModuleFit fit = ModuleFit.flush(12, 4.2, 400);
        assertThat(fit).isEqualTo(new ModuleFit(7, 3));
        assertThat(fit.modules()).isEqualTo(21);
        // 4.8: three high upright 4.82 / 1.6606 = 2, lying 4.82 / 1.154 = 4
        assertThat(ModuleFit.flush(12, 4.8, 400).modules()).isEqualTo(28);
    }

    @Test
    void rowsStandAPitchApartAndTheLastNeedsNoStripBehindIt() {
        ModuleFit.Table table = new ModuleFit.Table(2, true);
        Plane plane = new Plane(30, 180);
        // 550 W are 2.2558 m long: two and a gap 4.5317 m, on the ground 3.9246 m
        assertThat(table.widthM(550)).isEqualTo(4.5317, within(1e-4));
        // 1 + (30 - 3.9246) / 12 = 3.17 rows, two modules high; 50.02 / 1.154 = 43 across
        assertThat(ModuleFit.rows(50, 30, 550, table, plane, 12)).isEqualTo(new ModuleFit(43, 6));
        assertThat(ModuleFit.rows(50, 3.93, 550, table, plane, 12)).isEqualTo(new ModuleFit(43, 2));
        assertThat(ModuleFit.rows(50, 3.92, 550, table, plane, 12).modules()).isZero();
    }

    @Test
    void lyingRowsOfAFlatRoofCountTheLongSideAcross() {
        ModuleFit.Table table = new ModuleFit.Table(1, false);
        // 1.134 cos 10 = 1.1168; 1 + (10 - 1.1168) / 1.8 = 5.9; 20.02 / (2.0508 + 0.02) = 9
        assertThat(ModuleFit.rows(20, 10, 500, table, new Plane(10, 180), 1.8)).isEqualTo(new ModuleFit(9, 5));
    }

    @Test
    void nothingFitsOnNothingAndALengthThatIsNoneIsRefused() {
        assertThat(ModuleFit.flush(0, 0, 400).modules()).isZero();
        assertThatThrownBy(() -> ModuleFit.flush(-1, 4, 400)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> ModuleFit.flush(4, Double.NaN, 400)).isInstanceOf(Range.OutOfRange.class);
        assertThatThrownBy(() -> ModuleFit.flush(4, 4, 0)).isInstanceOf(Range.OutOfRange.class);
    }
}
