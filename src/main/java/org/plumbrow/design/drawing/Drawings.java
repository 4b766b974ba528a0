package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.design.DesignFacts;

/** All sheets of a design, from its data alone. */
public final class Drawings {

    private Drawings() {}

    /** Without the sun's own angle on the section, as the place on the earth is not told. */
    public static List<Sheet> sheets(DesignFacts facts) {
        return sheets(facts, null);
    }

    /** @param place where it stands on the earth, for the sun's angle on the section */
    public static List<Sheet> sheets(DesignFacts facts, @Nullable Place place) {
        List<Drawn> drawn = new ArrayList<>(new OneLine(facts).sheets());
        Frame frame = new Frame(facts);
        List<Sheet> sheets = new ArrayList<>();
        for (Drawn one : drawn) {
            String svg = frame.around(one, sheets.size() + 1, drawn.size());
            sheets.add(new Sheet(one.slug(), one.title(), one.number(), svg));
        }
        return List.copyOf(sheets);
    }
}
