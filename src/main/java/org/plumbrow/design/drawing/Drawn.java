package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A drawing before it has its frame.
 *
 * @param number the letter of its kind (E electrical, A array, S section, Q quantities), then with its number
 * @param says what a colleague would say of it, for those who do not see it
 */
record Drawn(String slug, String title, String number, String scale, String says, Canvas canvas) {

    static final String NOT_TO_SCALE = "not to scale";

    private static final String FURTHER = ", sheet ";

    Drawn numbered(int count) {
        return new Drawn(slug, title, number + "-" + count, scale, says, canvas);
    }

    /** Whether it is a further sheet of the same drawing. */
    boolean goesOnFrom(Drawn first) {
        return title.startsWith(first.title + FURTHER);
    }

    /** Sheets of one drawing: the first by its name, the others counted. */
    static List<Drawn> all(String slug, String title, String letter, String scale, String says, List<Canvas> canvases) {
        List<Drawn> drawn = new ArrayList<>();
        for (int i = 1; i <= canvases.size(); i++) {
            String name = i == 1 ? slug : slug + "-" + i;
            String head = i == 1 ? title : title + FURTHER + i;
            drawn.add(new Drawn(name, head, letter, scale, says, canvases.get(i - 1)));
        }
        return drawn;
    }
}
