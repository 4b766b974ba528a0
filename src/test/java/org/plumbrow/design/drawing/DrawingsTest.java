package org.plumbrow.design.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.design.DesignFacts;

/** What every sheet of every design keeps. */
class DrawingsTest {

    static final Place PLACE = new Place(42.5, -93, 300, -6);

    static Stream<DesignFacts> designs() {
        return Stream.concat(
                Stream.of(MadeUpDesigns.home(), MadeUpDesigns.field(), MadeUpDesigns.flatRoof(), MadeUpDesigns.large()),
                LongStream.range(0, 12).mapToObj(MadeUpDesigns::random));
    }

    private static List<Sheet> sheets(DesignFacts facts) {
        return Drawings.sheets(facts, PLACE);
    }

    @ParameterizedTest
    @MethodSource("designs")
    void everyStringRunAndDeviceStandsOnTheSheetsWithItsFigures(DesignFacts facts) {
        String all = String.join(
                " ", sheets(facts).stream().map(ReadBack::of).map(ReadBack::all).toList());
        List<String> asked = new ArrayList<>();
        facts.strings().forEach(string -> asked.add(string.mark()));
        facts.runs()
                .forEach(run ->
                        asked.addAll(List.of(run.mark(), Say.figure(run.lengthFt()) + " ft", Say.conductors(run))));
        facts.devices()
                .forEach(device -> asked.addAll(List.of(device.mark(), Say.rating(device), device.whoMayOpen())));
        facts.inverters().forEach(inverter -> asked.addAll(List.of(inverter.mark(), inverter.place())));
        facts.combiners().forEach(combiner -> asked.add(combiner.mark()));
        assertThat(asked).allSatisfy(what -> assertThat(all).contains(what));
    }

    @ParameterizedTest
    @MethodSource("designs")
    void noTwoLabelsTouch(DesignFacts facts) {
        for (Sheet sheet : sheets(facts)) {
            List<ReadBack.Words> words = ReadBack.of(sheet).words();
            List<String> touching = new ArrayList<>();
            for (int i = 0; i < words.size(); i++) {
                for (int j = i + 1; j < words.size(); j++) {
                    if (words.get(i).touches(words.get(j))) {
                        touching.add(words.get(i) + " and " + words.get(j));
                    }
                }
            }
            assertThat(touching).as(sheet.slug()).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("designs")
    void nothingIsSmallAndNothingLeavesTheFrame(DesignFacts facts) {
        for (Sheet sheet : sheets(facts)) {
            ReadBack read = ReadBack.of(sheet);
            assertThat(read.words()).as(sheet.slug()).allSatisfy(word -> {
                assertThat(word.size()).isGreaterThanOrEqualTo(8);
                assertThat(word.left()).isGreaterThanOrEqualTo(20);
                assertThat(word.right()).isLessThanOrEqualTo(1204);
                assertThat(word.top()).isGreaterThanOrEqualTo(20);
                assertThat(word.bottom()).isLessThanOrEqualTo(772);
            });
            for (String axis : List.of("x1", "x2")) {
                assertThat(read.elements("line"))
                        .allSatisfy(line -> assertThat(Double.parseDouble(line.getAttribute(axis)))
                                .isBetween(18.0, 1206.0));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("designs")
    void everySheetSaysWhatItShowsAndStylesNothing(DesignFacts facts) {
        List<Sheet> sheets = sheets(facts);
        assertThat(sheets).extracting(Sheet::slug).doesNotHaveDuplicates();
        assertThat(sheets).extracting(Sheet::number).doesNotHaveDuplicates();
        assertThat(sheets).allSatisfy(sheet -> {
            ReadBack read = ReadBack.of(sheet);
            assertThat(read.document().getDocumentElement().getAttribute("role"))
                    .isEqualTo("img");
            assertThat(read.elements("title").get(0).getTextContent())
                    .contains(facts.sheet().projectName());
            assertThat(read.elements("desc").get(0).getTextContent()).isNotBlank();
            assertThat(sheet.svg()).doesNotContain("style=", "<script", "NaN", "Infinity", "null");
            assertThat(read.all())
                    .contains(facts.sheet().projectNumber(), facts.codeEdition().words(), "Planning aid");
        });
    }
}
