package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.PvArray;
import org.plumbrow.design.check.DesignChecks;

/** All sheets of a design, from its data alone. */
public final class Drawings {

    private Drawings() {}

    /** Without the sun's own angle on the section, as the place on the earth is not told. */
    public static List<Sheet> sheets(DesignFacts facts) {
        return sheets(facts, null);
    }

    /** @param place where it stands on the earth, for the sun's angle on the section */
    public static List<Sheet> sheets(DesignFacts facts, @Nullable Place place) {
        List<DesignChecks.Group> checks = DesignChecks.of(facts);
        List<Drawn> inside = new ArrayList<>(new CheckSheets(checks, facts.codeEdition()).sheets());
        inside.addAll(drawn(facts, place));
        List<Drawn> drawn = new Cover(facts, checks).before(numbered(inside));
        Frame frame = new Frame(facts);
        List<Sheet> sheets = new ArrayList<>();
        for (Drawn one : drawn) {
            Canvas canvas = frame.around(one, sheets.size() + 1, drawn.size());
            sheets.add(new Sheet(
                    one.slug(), one.title(), one.number(), facts.sheet().projectName(), one.says(), canvas));
        }
        return List.copyOf(sheets);
    }

    private static List<Drawn> drawn(DesignFacts facts, @Nullable Place place) {
        List<Drawn> drawn = new ArrayList<>(new OneLine(facts).sheets());
        drawn.addAll(new SitePlan(facts).sheets());
        for (PvArray array : facts.arrays()) {
            drawn.addAll(new Layout(facts, array).sheets());
            drawn.addAll(new Section(facts, array, place).sheets());
        }
        facts.arrays().forEach(array -> drawn.addAll(new StringMap(facts, array).sheets()));
        drawn.addAll(quantities(facts));
        return drawn;
    }

    private static List<Drawn> quantities(DesignFacts facts) {
        Flow flow = Flow.onNewSheet();
        flow.table(Quantities.of(facts).table());
        flow.table(Schedules.labels(facts));
        String says = "Bill of quantities and the labels that are put up.";
        return Drawn.all("quantities", "Quantities and labels", "Q", Drawn.NOT_TO_SCALE, says, flow.canvases());
    }

    static List<Drawn> numbered(List<Drawn> drawn) {
        Map<String, Integer> counts = new HashMap<>();
        return drawn.stream()
                .map(one -> one.numbered(counts.merge(one.number(), 1, Integer::sum)))
                .toList();
    }

    /** "a1" of "A1", for addresses. */
    static String slug(String mark) {
        String plain = mark.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        return plain.replaceAll("^-|-$", "");
    }
}
