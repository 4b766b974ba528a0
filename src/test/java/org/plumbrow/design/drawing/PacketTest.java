package org.plumbrow.design.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.plumbrow.design.DesignFacts;

/** The packet read back from its PDF. */
class PacketTest {

    static Stream<DesignFacts> designs() {
        return Stream.concat(
                Stream.of(
                        MadeUpDesigns.home(),
                        MadeUpDesigns.field(),
                        MadeUpDesigns.flatRoof(),
                        MadeUpDesigns.large(),
                        MadeUpDesigns.twoHundredStrings()),
                LongStream.range(0, 4).mapToObj(MadeUpDesigns::random));
    }

    /** What stands on one page: its words as they are read, and where each letter is. */
    private record Page(String words, List<TextPosition> letters) {}

    private static byte[] packet(DesignFacts facts) {
        return Packet.of(facts, Drawings.sheets(facts, DrawingsTest.PLACE));
    }

    private static List<Page> pages(byte[] pdf) throws IOException {
        List<Page> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int number = 1; number <= document.getNumberOfPages(); number++) {
                List<TextPosition> letters = new ArrayList<>();
                PDFTextStripper reader = new PDFTextStripper() {
                    @Override
                    protected void processTextPosition(TextPosition letter) {
                        letters.add(letter);
                        super.processTextPosition(letter);
                    }
                };
                reader.setSuppressDuplicateOverlappingText(false);
                reader.setStartPage(number);
                reader.setEndPage(number);
                pages.add(new Page(plain(reader.getText(document)), letters));
            }
        }
        return pages;
    }

    private static String plain(String words) {
        return words.replaceAll("\\s+", " ");
    }

    @ParameterizedTest
    @MethodSource("designs")
    void everyTextOfEverySheetIsReadOnItsPage(DesignFacts facts) throws IOException {
        List<Sheet> sheets = Drawings.sheets(facts, DrawingsTest.PLACE);
        byte[] pdf = Packet.of(facts, sheets);
        List<Page> pages = pages(pdf);
        assertThat(pages).hasSameSizeAs(sheets);
        for (int i = 0; i < sheets.size(); i++) {
            String read = pages.get(i).words();
            assertThat(ReadBack.of(sheets.get(i)).words())
                    .as(sheets.get(i).slug())
                    .allSatisfy(
                            word -> assertThat(read).contains(plain(word.text()).strip()));
            assertThat(read).contains((i + 1) + " of " + sheets.size());
        }
    }

    @ParameterizedTest
    @MethodSource("designs")
    void noLetterLeavesThePaper(DesignFacts facts) throws IOException {
        for (Page page : pages(packet(facts))) {
            assertThat(page.letters()).isNotEmpty().allSatisfy(letter -> {
                assertThat(letter.getX()).isGreaterThanOrEqualTo(18);
                assertThat(letter.getX() + letter.getWidth()).isLessThanOrEqualTo(1206);
                assertThat(letter.getY() - letter.getHeight()).isGreaterThanOrEqualTo(18);
                assertThat(letter.getY()).isLessThanOrEqualTo(774);
            });
        }
    }

    @Test
    void everyStringRunDeviceAndRatingIsRead() throws IOException {
        DesignFacts facts = MadeUpDesigns.twoHundredStrings();
        assertThat(facts.strings()).hasSize(200);
        StringBuilder words = new StringBuilder();
        pages(packet(facts)).forEach(page -> words.append(page.words()).append(' '));
        String all = words.toString();
        facts.strings().forEach(string -> assertThat(all).contains(string.mark()));
        facts.runs().forEach(run -> assertThat(all).contains(run.mark(), Say.figure(run.lengthFt()) + " ft"));
        facts.devices().forEach(device -> assertThat(all).contains(device.mark(), Say.rating(device)));
        facts.inverters().forEach(inverter -> assertThat(all).contains(inverter.mark()));
    }

    @Test
    void theSameDataGiveTheSameBytes() {
        DesignFacts facts = MadeUpDesigns.field();
        assertThat(packet(facts)).isEqualTo(packet(facts));
    }

    @Test
    void itSaysWhatItIsAndLeadsToEachSheet() throws IOException {
        DesignFacts facts = MadeUpDesigns.field();
        try (PDDocument document = Loader.loadPDF(packet(facts))) {
            assertThat(document.getDocumentInformation().getTitle())
                    .isEqualTo("QV-2027-014 Sedge dairy, north & south <barns>, design packet, revision B");
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en-US");
            List<String> bookmarks = new ArrayList<>();
            document.getDocumentCatalog()
                    .getDocumentOutline()
                    .children()
                    .forEach(bookmark -> bookmarks.add(bookmark.getTitle()));
            assertThat(bookmarks)
                    .hasSize(document.getNumberOfPages())
                    .startsWith("G-1 Cover and index", "C-1 Checks")
                    .contains("E-1 One-line diagram", "A-1 Array layout A1", "Q-1 Quantities and labels");
            for (PDPage page : document.getPages()) {
                assertThat(page.getMediaBox().getWidth()).isEqualTo(1224);
                for (var name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).isTrue();
                }
            }
        }
    }

    @Test
    void aDraftIsMarkedAcrossEverySheetAndARevisionIsNot() throws IOException {
        assertThat(pages(packet(MadeUpDesigns.home())))
                .allSatisfy(page -> assertThat(biggest(page)).isGreaterThan(200));
        assertThat(pages(packet(MadeUpDesigns.field())))
                .allSatisfy(page -> assertThat(biggest(page)).isLessThan(40));
    }

    private static double biggest(Page page) {
        return page.letters().stream()
                .mapToDouble(TextPosition::getFontSizeInPt)
                .max()
                .orElse(0);
    }

    @Test
    void oddLettersAreWrittenOrVisiblyReplaced() throws IOException {
        DesignFacts odd = MadeUpDesigns.named("Björk’s “Höf” <script>alert('&')</script> 太陽 🌞\u0007\tend");
        String cover = pages(packet(odd)).get(0).words();
        assertThat(cover).contains("Björk’s “Höf”", "<script>alert('&')</script>", "\uFFFD\uFFFD \uFFFD end");
    }
}
