package org.plumbrow.design.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.PvArray;

/** That the sheets say what the data say: each dimension stands on its sheet, and a changed datum changes a sheet. */
class DataOnSheetsTest {

    /** Data that do not belong on a drawing, each with its reason. */
    private static final List<String> NOT_DRAWN = List.of(
            // what a run lies under counts only where it is buried; that of a trench is asked below
            ".runs[0].under",
            // of the disconnect that the utility asks for, and these are others
            ".devices[0].utilityLetter",
            // one side of a plane alone is no plane
            ".arrays[0].planeLengthFt",
            ".arrays[0].planeWidthFt",
            // things have marks; names are for lines and buildings
            ".places[0].name");

    static Stream<DesignFacts> designs() {
        return Stream.of(MadeUpDesigns.home(), MadeUpDesigns.field(), MadeUpDesigns.flatRoof());
    }

    private static Map<String, String> words(DesignFacts facts) {
        return Drawings.sheets(facts, DrawingsTest.PLACE).stream()
                .collect(Collectors.toMap(
                        Sheet::slug, sheet -> ReadBack.of(sheet).all()));
    }

    private static String drawn(DesignFacts facts) {
        return Drawings.sheets(facts, DrawingsTest.PLACE).stream()
                .map(Sheet::svg)
                .collect(Collectors.joining());
    }

    /** All but the cover and the checks: those change with nearly everything. */
    private static String drawingsOnly(DesignFacts facts) {
        return Drawings.sheets(facts, DrawingsTest.PLACE).stream()
                .filter(sheet ->
                        !sheet.slug().startsWith("cover") && !sheet.slug().startsWith("checks"))
                .map(Sheet::svg)
                .collect(Collectors.joining());
    }

    @ParameterizedTest
    @MethodSource("designs")
    void everyDimensionOfAnArrayStandsOnItsLayout(DesignFacts facts) {
        Map<String, String> words = words(facts);
        for (PvArray array : facts.arrays()) {
            ArrayShape shape = new ArrayShape(array);
            String layout = words.get("layout-" + Drawings.slug(array.mark()));
            List<String> asked = new ArrayList<>(List.of(
                    Layout.feet(shape.lengthFt()),
                    Layout.feet(shape.overallDepthFt()),
                    Say.figure(array.tiltDeg()) + "°",
                    Say.figure(array.azimuthDeg()) + "°",
                    Say.of(array.setbackFt(), "ft"),
                    array.module().longSideMm() + " × " + array.module().shortSideMm() + " mm"));
            if (array.rowPitchFt() != null) {
                asked.add("pitch " + Say.figure(array.rowPitchFt()) + " ft");
            }
            if (array.planeLengthFt() != null) {
                asked.add(Say.figure(array.planeLengthFt()) + " ft by " + Say.figure(array.planeWidthFt()) + " ft");
            }
            array.obstructions()
                    .forEach(thing -> asked.addAll(List.of(
                            thing.name(),
                            Say.figure(thing.widthFt()) + " × " + Say.figure(thing.lengthFt()) + " ft",
                            Say.figure(thing.heightFt()) + " ft high")));
            assertThat(asked).allSatisfy(what -> assertThat(layout).contains(what));
        }
    }

    @Test
    void everyDimensionOfRowsAndPostsStandsOnTheSection() {
        DesignFacts facts = MadeUpDesigns.field();
        PvArray array = facts.arrays().get(0);
        ArrayShape shape = new ArrayShape(array);
        var racking = facts.racking();
        String section = words(facts).get("section-a1");
        assertThat(section)
                .contains(
                        Say.figure(array.tiltDeg()) + "°",
                        "pitch " + Say.figure(array.rowPitchFt()) + " ft",
                        Layout.feet(shape.slantFt()),
                        Layout.feet(shape.depthFt()),
                        "clear " + Layout.feet(shape.pitchFt() - shape.depthFt()),
                        "front " + Say.of(racking.frontClearanceIn(), "in"),
                        "embedment " + Say.of(racking.embedmentIn(), "in"),
                        "exposed " + Say.of(racking.exposedIn(), "in"),
                        Say.of(racking.postLengthFt(), "ft") + " long",
                        Say.of(racking.windMph(), "mph"),
                        Say.of(racking.siteFrostIn(), "in"));
        String layout = words(facts).get("layout-a1");
        assertThat(layout).contains(racking.posts() + " on the site", Say.of(racking.postSpacingFt(), "ft") + " apart");
    }

    @Test
    void everyTrenchStandsWithLengthDepthConduitAndCrossings() {
        DesignFacts facts = MadeUpDesigns.field();
        String layout = words(facts).get("layout-a1");
        facts.runs().stream()
                .filter(run -> run.coverIn() != null)
                .forEach(run -> assertThat(layout)
                        .contains(
                                run.mark(), Say.figure(run.lengthFt()) + " ft", Say.figure(run.coverIn()) + " in deep")
                        .contains(Say.raceway(run).split(" ")[0])
                        .contains(run.crossings().get(0), "under " + run.under()));
    }

    @Test
    void thePlanOfTheSiteSaysWhereEverythingStandsAndWhatIsOnlyByRule() {
        String measured = words(MadeUpDesigns.field()).get("site-plan");
        assertThat(measured)
                .contains("meter", "A1", "INV 1", "D1", "R14: 136.0 ft", "62.1 ft", "198.1 ft", "36 in deep")
                .contains("north boundary", "pasture fence", "parlor", "water line", "farm lane")
                .contains("as written");
        String byRule = words(MadeUpDesigns.large()).get("site-plan");
        assertThat(byRule).contains("by rule, not measured", "INV 1 to INV 8", ": 310 ft");
    }

    @Test
    void byRuleInvertersStandAtTheEndNearestTheMeter() {
        var geometry = new SiteGeometry(MadeUpDesigns.large());
        var corner = geometry.arrays().get(0).corner();
        var inverters = geometry.things().get(0);
        assertThat(inverters.measured()).isFalse();
        assertThat(inverters.at().northFt()).isCloseTo(-310, org.assertj.core.data.Offset.offset(0.01));
        assertThat(inverters.at().eastFt()).isCloseTo(corner.eastFt() - 4, org.assertj.core.data.Offset.offset(0.01));
    }

    @ParameterizedTest
    @MethodSource("designs")
    void eachChangedDatumChangesASheet(DesignFacts facts) {
        String before = drawingsOnly(facts);
        List<String> unseen = new ArrayList<>();
        Mutants.of(facts).forEach((path, mutant) -> {
            if (drawingsOnly(mutant).equals(before)) {
                unseen.add(path);
            }
        });
        assertThat(unseen).isSubsetOf(NOT_DRAWN);
    }

    @ParameterizedTest
    @MethodSource("designs")
    void hostileNamesStayWords(DesignFacts facts) {
        String hostile = "\"><script>alert('&')</script>\u0001]]>";
        DesignFacts attack = Mutants.withTexts(facts, text -> text + hostile);
        for (Sheet sheet : Drawings.sheets(attack, DrawingsTest.PLACE)) {
            ReadBack read = ReadBack.of(sheet);
            assertThat(read.elements("script")).as(sheet.slug()).isEmpty();
            assertThat(sheet.svg()).doesNotContain("<script");
        }
        assertThat(Packet.of(attack, Drawings.sheets(attack, DrawingsTest.PLACE)))
                .isNotEmpty();
        assertThat(drawn(attack)).contains("&lt;script&gt;");
    }
}
