package org.plumbrow.project.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** How an item stands, from what is asked, given and found. */
class JudgingTest {

    private static final Instant NOON = Instant.parse("2027-03-01T17:00:00Z");
    private static final Finding FITS = new Finding.Satisfied("180 modules as planned.");
    private static final Finding BREAKS = new Finding.Broken("String 3: 612 V is above 600 V.", "Use 13 modules.");
    private static final Finding UNKNOWN = new Finding.CannotTell("No plan yet.", "The designer brings it.");

    private static AskedItem shipped(String code) {
        return ShippedItems.all().stream()
                .filter(item -> item.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private static AnswerRow given(AnswerPart... parts) {
        return AnswerRow.none(UUID.randomUUID()).with(List.of(parts));
    }

    private static AnswerPart part(AnswerKind kind) {
        return part(kind, null, "");
    }

    private static AnswerPart part(AnswerKind kind, @Nullable String number, String note) {
        return new AnswerPart(
                UUID.randomUUID(),
                kind,
                number == null ? null : new BigDecimal(number),
                "",
                "",
                null,
                null,
                note,
                NOON,
                "Nell",
                1);
    }

    private static ItemState state(String code, @Nullable Finding finding, AnswerPart... parts) {
        return Judging.of(shipped(code), finding, given(parts)).state();
    }

    @Test
    void allPartsMustBeThere() {
        AskedItem gate = shipped("surveyed.14");
        assertThat(Judging.of(gate, null, given()).state()).isEqualTo(ItemState.OPEN);
        assertThat(Judging.of(gate, null, given(part(AnswerKind.PHOTO))).sentence())
                .isEqualTo("Missing: reading");
        assertThat(state("surveyed.14", null, part(AnswerKind.PHOTO), part(AnswerKind.READING, "9", "")))
                .isEqualTo(ItemState.DONE);
    }

    @Test
    void twoReadingsAreTwo() {
        AskedItem probe = shipped("surveyed.13");
        Judging.Verdict one = Judging.of(
                probe, null, given(part(AnswerKind.PHOTO), part(AnswerKind.PHOTO), part(AnswerKind.READING, "4", "")));
        assertThat(one.sentence()).isEqualTo("Missing: reading (1 of 2)");
    }

    @Test
    void aReadingOutsideIsAskedAboutUntilItIsExplained() {
        assertThat(Judging.of(shipped("installed.9"), null, given(part(AnswerKind.READING, "1.2", "")))
                        .sentence())
                .isEqualTo("1.2 Ω is outside at most 1 Ω. Explain it");
        assertThat(state("installed.9", null, part(AnswerKind.READING, "1.2", "")))
                .isEqualTo(ItemState.ASKED_ABOUT);
        assertThat(state("installed.9", null, part(AnswerKind.READING, "1.2", "Wet lug, cleaned.")))
                .isEqualTo(ItemState.DONE);
        assertThat(state("installed.9", null, part(AnswerKind.READING, "1", "")))
                .isEqualTo(ItemState.DONE);
    }

    @Test
    void withoutARuleAComputedItemIsCheckedByHand() {
        assertThat(Judging.givenKinds(shipped("designed.1"), true))
                .containsExactly(AnswerKind.DOCUMENT, AnswerKind.SIGNATURE);
        assertThat(state("designed.1", null, part(AnswerKind.DOCUMENT))).isEqualTo(ItemState.PARTLY);
        assertThat(state("designed.1", null, part(AnswerKind.DOCUMENT), part(AnswerKind.SIGNATURE)))
                .isEqualTo(ItemState.DONE);
    }

    @Test
    void theItemTurnsComputedWhenItsRuleAppears() {
        AnswerPart[] byHand = {part(AnswerKind.DOCUMENT), part(AnswerKind.SIGNATURE)};
        assertThat(state("designed.1", BREAKS, byHand)).isEqualTo(ItemState.BROKEN);
        assertThat(state("designed.1", FITS)).isEqualTo(ItemState.DONE);
        assertThat(Judging.of(shipped("designed.1"), FITS, given()).sentence()).isEqualTo("180 modules as planned.");
    }

    @Test
    void whatCannotBeToldALicensedPersonMaySign() {
        AnswerPart[] byHand = {part(AnswerKind.DOCUMENT), part(AnswerKind.SIGNATURE)};
        assertThat(state("designed.1", UNKNOWN)).isEqualTo(ItemState.CANNOT_TELL);
        assertThat(state("designed.1", UNKNOWN, byHand)).isEqualTo(ItemState.DONE);
    }

    @Test
    void whatIsNotComputedIsAnsweredByHandWhereARoomHasNoDataOfItsOwn() {
        assertThat(state("surveyed.9", UNKNOWN)).isEqualTo(ItemState.OPEN);
        assertThat(state("surveyed.9", UNKNOWN, part(AnswerKind.CONFIRMATION))).isEqualTo(ItemState.DONE);
        assertThat(state("surveyed.9", BREAKS, part(AnswerKind.CONFIRMATION))).isEqualTo(ItemState.BROKEN);
    }

    @Test
    void nobodySignsForTheCutoverDaysSafety() {
        AnswerPart[] byHand = {part(AnswerKind.DOCUMENT), part(AnswerKind.SIGNATURE)};
        assertThat(state("cutover.13", UNKNOWN, byHand)).isEqualTo(ItemState.CANNOT_TELL);
        assertThat(state("cutover.10", UNKNOWN, byHand)).isEqualTo(ItemState.DONE);
        assertThat(state("cutover.13", null, byHand)).as("no rule yet").isEqualTo(ItemState.DONE);
    }

    @Test
    void aRuleThatFitsDoesNotReplaceTheReadingBesideIt() {
        assertThat(state("installed.11", FITS)).isEqualTo(ItemState.OPEN);
        assertThat(state("installed.11", FITS, part(AnswerKind.READING, "20", "")))
                .isEqualTo(ItemState.DONE);
    }

    @Test
    void whoPromisedItIsSaid() {
        AnswerRow waiting = given().waiting("county permit office", LocalDate.of(2027, 3, 15));
        assertThat(Judging.of(shipped("installed.5"), null, waiting).sentence())
                .isEqualTo("Promised by county permit office");
        assertThat(Judging.of(shipped("installed.5"), null, given().waiting("county permit office", null))
                        .state())
                .isEqualTo(ItemState.WAITING);
    }

    @Test
    void aSafetyItemIsNeverWaivedWhoeverAsks() {
        AskedItem cold = shipped("designed.1");
        assertThat(AnswerRow.whyNeverWaived(cold))
                .contains(
                        "“String voltage in the cold within the limit” cannot be waived: it protects people, animals or"
                                + " equipment.");
        assertThatThrownBy(() -> given().waived(cold, "no time", "Ines", NOON))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(given().waived(shipped("designed.5"), "agreed", "Ines", NOON).stand())
                .isEqualTo(AnswerRow.Stand.WAIVED);
    }
}
