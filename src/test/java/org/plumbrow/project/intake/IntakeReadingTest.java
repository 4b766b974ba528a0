package org.plumbrow.project.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.evidence.table.TableReader;
import org.plumbrow.evidence.table.TableUnreadable;
import org.plumbrow.evidence.table.UserTable;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.SiteLoad;

class IntakeReadingTest {

    private static final IntakeReading.Here NOTHING_HERE =
            new IntakeReading.Here(Set.of(), Map.of(), Map.of(), LocalDate.of(2027, 3, 1));

    private static List<IntakeRow> read(String text, IntakeReading.Here here) throws TableUnreadable {
        UserTable table = TableReader.read(text.getBytes(StandardCharsets.UTF_8));
        return IntakeReading.read(table, IntakeChoices.guessed(table.header()), here);
    }

    private static IntakeRow.Ready ready(String header, String row) throws TableUnreadable {
        return (IntakeRow.Ready) read(header + "\n" + row + "\n", NOTHING_HERE).get(0);
    }

    private static List<String> faults(String header, String row) throws TableUnreadable {
        return ((IntakeRow.LeftOut)
                        read(header + "\n" + row + "\n", NOTHING_HERE).get(0))
                .sentences();
    }

    @Test
    void aMessyRowIsUnderstood() throws TableUnreadable {
        IntakeRow.Ready row = ready(
                "reference,permission_to_operate,size_kw_dc,total_price_usd,segment,ground_mounted,latitude,longitude,azimuth_deg,tilt_deg,modules,module_w,inverters,inverter_kw_ac",
                "S0002,18-May-20,6.615,23351.0,RES,no,33.1958796,-117.3794834,244.0,18.0,21.0,315.0,1.0,5.052");

        ProjectFacts.Contract contract = row.project().contract();
        assertThat(row.project().name()).isEqualTo("S0002");
        assertThat(row.operatingSince()).isEqualTo(LocalDate.of(2020, 5, 18));
        assertThat(contract.systemKwDc()).isEqualByComparingTo("6.615");
        assertThat(contract.inverters()).isEqualTo(1);
        assertThat(contract.arrays())
                .containsExactly(new ProjectFacts.ArrayFacts(
                        Mounting.PITCHED_ROOF, 21, new BigDecimal("315"), new BigDecimal("18"), new BigDecimal("244")));
        assertThat(row.project().site().loads()).containsExactly(SiteLoad.HOME);
        assertThat(row.notes()).containsExactly("mounting not said, taken as pitched roof");
    }

    @Test
    void everyFaultOfARowIsSaidAtOnceWithItsLineAndWhatIsWrong() throws TableUnreadable {
        assertThat(faults("reference,pto,size kW,modules,tilt", "A1,13/32/2026,many,2.5,120"))
                .containsExactlyInAnyOrder(
                        "Line 2: Permission to operate, date: “13/32/2026” is no date.",
                        "Line 2: System size, DC: “many” is no number.",
                        "Line 2: Modules: “2.5” is no whole number.",
                        "Line 2: Tilt, degrees: 120 is outside 0 to 90 degrees.");
    }

    @Test
    void aRowWithoutAnyNameAndADayThatHasNotComeAreRefused() throws TableUnreadable {
        assertThat(faults("reference,pto,size kW", ",3/2/2027,5"))
                .containsExactlyInAnyOrder(
                        "Line 2: it has neither a name nor a reference to be called by; fill in one of them.",
                        "Line 2: Permission to operate, date: 2027-03-02 has not come yet; leave it empty until then.");
    }

    @Test
    void aSizeInWattsIsFoundOutFromItsHeading() throws TableUnreadable {
        assertThat(ready("reference,size W DC", "A1,\"6,615\"")
                        .project()
                        .contract()
                        .systemKwDc())
                .isEqualByComparingTo("6.615");
    }

    @Test
    void aReferenceThatIsHereOrStandsTwiceMakesNoDouble() throws TableUnreadable {
        IntakeReading.Here here = new IntakeReading.Here(Set.of("a1"), Map.of(), Map.of(), LocalDate.of(2027, 3, 1));
        List<IntakeRow> rows = read("reference,size kW\nA1,5\nA2,6\nA2,7\n", here);

        assertThat(rows.get(0)).isEqualTo(new IntakeRow.IsHere(2, "A1"));
        assertThat(rows.get(1)).isInstanceOf(IntakeRow.Ready.class);
        assertThat(((IntakeRow.LeftOut) rows.get(2)).sentences())
                .containsExactly("Line 4: reference A2 stands in line 3 too; keep one of them.");
    }

    @Test
    void aUtilityThatTheBranchDoesNotKnowIsNamed() throws TableUnreadable {
        UUID known = UUID.randomUUID();
        IntakeReading.Here here =
                new IntakeReading.Here(Set.of(), Map.of("valley electric", known), Map.of(), LocalDate.of(2027, 3, 1));
        List<IntakeRow> rows = read("name,utility\nBarn,Valley Electric\nHome,Hill Power\n", here);

        assertThat(((IntakeRow.Ready) rows.get(0)).project().site().utilityId()).isEqualTo(known);
        assertThat(((IntakeRow.LeftOut) rows.get(1)).sentences())
                .containsExactly(
                        "Line 3: Utility: the branch knows no “Hill Power”; add it under utilities or correct the name.");
    }
}
