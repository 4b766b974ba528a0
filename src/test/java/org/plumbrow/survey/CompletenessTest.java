package org.plumbrow.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.SiteLoad;
import org.plumbrow.project.Standing;
import org.plumbrow.survey.SurveyFixture.Readings;
import org.plumbrow.survey.SurveySheet.StoredPart;

/** What the designer still lacks, by mounting and by what is on the site. */
class CompletenessTest {

    private static ProjectFacts project(Mounting mounting, Set<SiteLoad> loads, boolean generator) {
        var site = new ProjectFacts.Site(
                null, null, null, null, null, null, loads, generator, false, false, null, null, List.of());
        var array = new ProjectFacts.ArrayFacts(mounting, 23, BigDecimal.TEN, null, null);
        var contract =
                new ProjectFacts.Contract(null, null, List.of(array), null, null, null, null, null, null, null, null);
        return new ProjectFacts(
                UUID.randomUUID(),
                UUID.randomUUID(),
                "QV-2027-001",
                "Alder Lane",
                null,
                Standing.OPEN,
                1,
                Instant.EPOCH,
                "owner",
                site,
                contract,
                null,
                Map.of());
    }

    static final ProjectFacts HOME = project(Mounting.PITCHED_ROOF, Set.of(SiteLoad.HOME), false);

    static SurveySheet sheet(Map<SurveyPart, Map<String, String>> other) {
        Map<SurveyPart, StoredPart> parts = new EnumMap<>(SurveyPart.class);
        for (SurveyPart part : SurveyPart.values()) {
            Map<String, String> typed = new HashMap<>(Readings.home(part));
            typed.putAll(other.getOrDefault(part, Map.of()));
            if (!typed.isEmpty()) {
                PartReadings read =
                        PartTyping.read(part, typed, PartReadings.EMPTY).readings();
                parts.put(part, new StoredPart(part, 1, read, Instant.EPOCH, "Tamsin"));
            }
        }
        return new SurveySheet(parts, 10);
    }

    private static Completeness.Besides allPhotos(ProjectFacts project) {
        return new Completeness.Besides(
                PhotoItem.of(project).stream().map(PhotoItem::number).collect(Collectors.toCollection(TreeSet::new)),
                List.of());
    }

    private static List<String> lacks(ProjectFacts project, SurveySheet sheet) {
        return Completeness.of(project, sheet, allPhotos(project)).lacks().stream()
                .map(Completeness.Lack::sentence)
                .toList();
    }

    @Test
    void aHomeWithEverythingReadIsEnoughToDraw() {
        assertThat(lacks(HOME, sheet(Map.of()))).isEmpty();
    }

    @Test
    void eachReadingThatADesignerNeedsIsMissedWhenItIsNotThere() {
        for (SurveyPart part : SurveyPart.values()) {
            for (String name : Readings.home(part).keySet()) {
                if (Set.of("plane.1.name", "plane.1.spacing_in", "private_lines")
                                .contains(name)
                        || name.startsWith("h_")) {
                    continue;
                }
                assertThat(lacks(HOME, sheet(Map.of(part, Map.of(name, "")))))
                        .as(part + " without " + name)
                        .isNotEmpty();
            }
        }
    }

    @Test
    void aGroundMountAsksForTheFieldAndADairyForItsLoads() {
        ProjectFacts dairy = project(Mounting.GROUND, Set.of(SiteLoad.DAIRY), true);
        assertThat(lacks(dairy, sheet(Map.of())))
                .contains(
                        "Length and width of the field",
                        "Slope of the field",
                        "Two probes with depth and refusal",
                        "Width of the gate",
                        "Generator: rating, switch and place",
                        "Each load that must not stop, with what hangs on it")
                .noneMatch(sentence -> sentence.contains("roof"));
        assertThat(lacks(HOME, sheet(Map.of(SurveyPart.ROOF, Map.of("plane.1.pitch_deg", "")))))
                .containsExactly("A roof plane with its measures");
    }

    @Test
    void aQuestionThatNobodyAnsweredIsMissing() {
        assertThat(lacks(HOME, sheet(Map.of(SurveyPart.SERVICE, Map.of("disconnect_to_meter_ft", "14")))))
                .singleElement()
                .asString()
                .startsWith("The disconnect would be 14 ft from the meter");
    }

    @Test
    void aMainAboveTwoHundredAmpsAsksForTheFaultCurrent() {
        Map<SurveyPart, Map<String, String>> main = Map.of(SurveyPart.SERVICE, Map.of("main_a", "400"));
        assertThat(lacks(HOME, sheet(main))).containsExactly("Fault current at the service (the main is over 200 A)");
    }

    @Test
    void photosAreMissedByMountingAndAReasonStandsForOne() {
        assertThat(Completeness.of(HOME, sheet(Map.of()), Completeness.Besides.NOTHING)
                        .lacks())
                .extracting(Completeness.Lack::sentence)
                .containsExactly("18 photos of 18");
        Set<Integer> allButTheMeter = new TreeSet<>(allPhotos(HOME).photos());
        allButTheMeter.remove(2);
        assertThat(Completeness.of(HOME, sheet(Map.of()), new Completeness.Besides(allButTheMeter, List.of()))
                        .lacks())
                .extracting(Completeness.Lack::sentence)
                .containsExactly("1 photo: Meter, its number legible");
        ProjectFacts dairy = project(Mounting.GROUND, Set.of(SiteLoad.DAIRY), true);
        assertThat(PhotoItem.of(dairy)).contains(PhotoItem.PROBES, PhotoItem.GENERATOR, PhotoItem.FARM);
        assertThat(PhotoItem.of(HOME)).doesNotContain(PhotoItem.PROBES, PhotoItem.GENERATOR, PhotoItem.FARM);
    }

    @Test
    void factsSayWhatWasWritten() {
        SurveyFacts facts = FactsReading.of(HOME.id(), sheet(Map.of()));
        assertThat(facts.service().highestLineV()).contains(242.3);
        assertThat(facts.roof().get(0).covering()).isEqualTo(RoofCovering.ASPHALT);
        assertThat(facts.horizon(SurveyFacts.Occasion.BEFORE)).hasSize(17);
        assertThat(facts.horizon(SurveyFacts.Occasion.DAY_ONE)).isEmpty();
        assertThat(FactsReading.of(HOME.id(), SurveySheet.EMPTY).isRecorded()).isFalse();
    }
}
