package org.plumbrow.evidence.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class TableReaderTest {

    private static UserTable read(String text) throws TableUnreadable {
        return TableReader.read(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void theSeparatorIsFoundOut() throws TableUnreadable {
        assertThat(read("name;kW\nBarn, north;1,5\nHome;2\n").separator()).isEqualTo(';');
        assertThat(read("name\tkW\nBarn\t1\n").separator()).isEqualTo('\t');
        assertThat(read("name|kW\nBarn|1\n").separator()).isEqualTo('|');
        assertThat(read("name,kW\n\"Barn; north\",1\n").separator()).isEqualTo(',');
    }

    @Test
    void theEncodingIsFoundOut() throws TableUnreadable {
        String text = "name,kW\nMühle,1\n";
        assertThat(TableReader.read(("\uFEFF" + text).getBytes(StandardCharsets.UTF_8))
                        .header())
                .containsExactly("name", "kW");
        UserTable western = TableReader.read(text.getBytes(Charset.forName("windows-1252")));
        assertThat(western.encoding()).isEqualTo("Windows-1252");
        assertThat(western.rows().get(0).cells()).containsExactly("Mühle", "1");
        UserTable wide = TableReader.read(("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE));
        assertThat(wide.rows().get(0).cells().get(0)).isEqualTo("Mühle");
    }

    @Test
    void aRowIsKnownByItsLineOfTheFileEvenBehindCellsOfSeveralLines() throws TableUnreadable {
        UserTable table = read("exported on Monday\r\nname,kW\r\n\r\n\"two\r\nlines\",1\r\nlast,2\r\n");
        assertThat(table.header()).containsExactly("name", "kW");
        assertThat(table.rows()).extracting(UserTable.Row::line).containsExactly(4, 6);
    }

    @Test
    void shortAndLongRowsGetTheHeadersNumberOfCells() throws TableUnreadable {
        UserTable table = read("a,,c\n1\n1,2,3,4\n,,\n");
        assertThat(table.header()).containsExactly("a", "column 2", "c");
        assertThat(table.rows()).extracting(row -> row.cells().size()).containsExactly(3, 3);
    }

    @Test
    void aFileThatIsNoTableSaysWhatToDo() {
        assertThatThrownBy(() -> read("")).hasMessage("The file is empty. Choose it again.");
        assertThatThrownBy(() -> read("a,b\n")).hasMessage("The file has a heading but no row below it.");
        assertThatThrownBy(() -> read("only one column\nand a row\n")).hasMessageContaining("No heading was found");
        assertThatThrownBy(() -> read("a,b\n1,2\n\"open,3\n4,5\n")).hasMessageContaining("From line 3 on");
    }
}
