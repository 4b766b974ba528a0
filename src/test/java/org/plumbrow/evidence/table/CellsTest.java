package org.plumbrow.evidence.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.plumbrow.evidence.table.Cells.DateOrder;

class CellsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            28-Mar-19        | 2019-03-28
            1-Apr-20         | 2020-04-01
            3/4/27           | 2027-03-04
            3/4/2027         | 2027-03-04
            12.31.99         | 1999-12-31
            1/1/70           | 1970-01-01
            1/1/69           | 2069-01-01
            2027-03-04       | 2027-03-04
            2027-03-04 00:00 | 2027-03-04
            March 4, 2027    | 2027-03-04
            4 sept 2027      | 2027-09-04
            """)
    void readsADateAsPeopleWriteIt(String cell, LocalDate expected) throws CellUnreadable {
        assertThat(Cells.date(cell, DateOrder.MONTH_FIRST)).contains(expected);
    }

    @Test
    void theOrderOfFiguresIsTheFiles() throws CellUnreadable {
        assertThat(Cells.date("3/4/27", DateOrder.DAY_FIRST)).contains(LocalDate.of(2027, 4, 3));
    }

    @ParameterizedTest
    @ValueSource(strings = {"13/32/2026", "2/30/2027", "soon", "28-Foo-19", "2027", "45012"})
    void whatIsNoDateIsSaidInItsOwnWords(String cell) {
        assertThatThrownBy(() -> Cells.date(cell, DateOrder.MONTH_FIRST)).hasMessage("“" + cell + "” is no date");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "-", "n/a", "N/A", "None", "–"})
    void nothingIsNothing(String cell) throws CellUnreadable {
        assertThat(Cells.number(cell)).isEmpty();
        assertThat(Cells.date(cell, DateOrder.MONTH_FIRST)).isEmpty();
        assertThat(Cells.yesOrNo(cell)).isEmpty();
    }

    @Test
    void aWholeNumberMayCarryAZeroBehindThePoint() throws CellUnreadable {
        assertThat(Cells.whole("21.0")).contains(21);
        assertThat(Cells.whole("1,224")).contains(1224);
        assertThatThrownBy(() -> Cells.whole("21.5")).hasMessage("“21.5” is no whole number");
        assertThatThrownBy(() -> Cells.number("about 20")).hasMessage("“about 20” is no number");
    }
}
