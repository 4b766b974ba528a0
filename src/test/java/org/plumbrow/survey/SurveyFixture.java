package org.plumbrow.survey;

import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.project.ProjectFixture;
import org.springframework.stereotype.Component;

/** Surveys for tests, written through the service as a person would. */
@Component
public class SurveyFixture {

    private final TestWorld world;
    private final ProjectFixture projects;
    private final SurveyBook book;
    private final SurveyRemarks remarks;

    SurveyFixture(TestWorld world, ProjectFixture projects, SurveyBook book, SurveyRemarks remarks) {
        this.world = world;
        this.projects = projects;
        this.book = book;
        this.remarks = remarks;
    }

    UUID remark(TestBranch branch) {
        UUID project = projects.aHomeRoof().in(branch).build();
        world.as(branch.designer(), () -> remarks.add(project, SurveyPart.SERVICE, "Read leg B again."));
        return remarks(branch, project);
    }

    private UUID remarks(TestBranch branch, UUID project) {
        return world.as(branch.designer(), () -> remarks.open(project).get(0).id());
    }

    /** All parts of a home with a pitched roof, in order; no photos. */
    public void home(TestBranch branch, UUID project) {
        for (SurveyPart part : SurveyPart.values()) {
            Map<String, String> typed = Readings.home(part);
            if (!typed.isEmpty()) {
                world.as(branch.projectManager(), () -> book.save(project, part, 0, typed));
            }
        }
    }

    /** What is typed in tests. */
    static final class Readings {

        private Readings() {}

        static Map<String, String> home(SurveyPart part) {
            return switch (part) {
                case SERVICE -> service();
                case ROOF ->
                    Map.of(
                            "plane.1.name", "south",
                            "plane.1.covering", "ASPHALT",
                            "plane.1.year", "2016",
                            "plane.1.life_years", "20",
                            "plane.1.structure", "rafters 2x8",
                            "plane.1.spacing_in", "16",
                            "plane.1.pitch_deg", "30",
                            "plane.1.azimuth_deg", "195",
                            "plane.1.width_ft", "42",
                            "plane.1.length_ft", "18");
                case ROUTES ->
                    Map.of(
                            "route.1.kind", "ABOVE_GROUND",
                            "route.1.length_ft", "48",
                            "route.1.crosses", "nothing",
                            "private_lines", "none");
                case SHADE -> horizon();
                case ACCESS -> Map.of("lane", "street", "overhead", "service drop, 14 ft");
                case CLOSE -> Map.of("surveyed_by", "Tamsin", "surveyed_on", "2027-03-02");
                default -> Map.of();
            };
        }

        static Map<String, String> service() {
            Map<String, String> typed = new HashMap<>(Map.of(
                    "type", "SINGLE_PHASE_120_240",
                    "v_AN", "121.4",
                    "v_BN", "120.9 V",
                    "v_AB", "242.3",
                    "main_a", "200",
                    "bus_a", "225",
                    "interrupting_ka", "22",
                    "meter_number", "55 120 1",
                    "transformer_kva", "25",
                    "grounding", "two rods; bond in the main panel"));
            typed.putAll(Map.of(
                    "other_sources", "none",
                    "interconnection", "breaker in the main panel",
                    "array_to_inverter_ft", "40",
                    "inverter_to_poi_ft", "12",
                    "inverter_to_meter_ft", "15",
                    "disconnect_to_meter_ft", "6"));
            return typed;
        }

        static Map<String, String> horizon() {
            Map<String, String> typed = new HashMap<>();
            for (int azimuth = 60; azimuth <= 300; azimuth += 15) {
                typed.put("h_" + azimuth, azimuth < 120 ? "12" : "4.5");
            }
            return typed;
        }
    }
}
