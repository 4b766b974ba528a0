package org.plumbrow.design.drawing;

import java.util.List;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.TitleBlock;

/** The sheet around a drawing: 17 by 11 inches, a heavy frame, and the ruled title block along its foot. */
final class Frame {

    static final double WIDTH = 1224;
    static final double HEIGHT = 792;

    /** What a drawing may use. */
    static final double LEFT = 32;

    static final double RIGHT = 1192;
    static final double TOP = 32;
    static final double BOTTOM = 690;

    static final String CAUTION =
            "Planning aid: a licensed person must confirm it against the code in force here, the makers' instructions and the utility's rules. Modules make voltage whenever there is light.";

    private static final double EDGE = 18;
    private static final double BLOCK_TOP = 700;
    private static final double CAUTION_TOP = 758;
    private static final double[] CELLS = {268, 236, 250, 128, 112, 88, 106};

    private final DesignFacts facts;

    Frame(DesignFacts facts) {
        this.facts = facts;
    }

    /** One sheet with its number among all. */
    Canvas around(Drawn drawn, int place, int of) {
        Canvas canvas = new Canvas();
        if (facts.isDraft()) {
            canvas.watermark(WIDTH / 2, 470, 250, "DRAFT");
        }
        canvas.add(drawn.canvas());
        edges(canvas);
        cells(canvas, drawn, place, of);
        return canvas;
    }

    private static void edges(Canvas canvas) {
        canvas.rect(EDGE, EDGE, WIDTH - 2 * EDGE, HEIGHT - 2 * EDGE, Weight.HEAVY, Canvas.NONE);
        canvas.line(EDGE, BLOCK_TOP, WIDTH - EDGE, BLOCK_TOP, Weight.LINE);
        canvas.line(EDGE, CAUTION_TOP, WIDTH - EDGE, CAUTION_TOP, Weight.THIN);
        canvas.text(EDGE + 8, CAUTION_TOP + 11, 8, Anchor.START, CAUTION);
    }

    private void cells(Canvas canvas, Drawn drawn, int place, int of) {
        TitleBlock sheet = facts.sheet();
        List<Cell> cells = List.of(
                new Cell("Project", sheet.projectNumber(), List.of(sheet.projectName())),
                new Cell("Place", "", List.of(sheet.address(), "Utility: " + sheet.utility())),
                new Cell("Drawing", drawn.title(), List.of("Scale: " + drawn.scale())),
                new Cell("Drawn by", "", List.of(said(sheet.drawnBy()), "Checked by " + said(sheet.checkedBy()))),
                new Cell(
                        "Date",
                        "",
                        List.of(sheet.date().toString(), facts.codeEdition().words())),
                new Cell("Revision", facts.revision() == null ? "DRAFT" : facts.revision(), List.of()),
                new Cell("Sheet", drawn.number(), List.of(place + " of " + of)));
        double x = EDGE;
        for (int i = 0; i < CELLS.length; i++) {
            if (i > 0) {
                canvas.line(x, BLOCK_TOP, x, CAUTION_TOP, Weight.THIN);
            }
            cells.get(i).draw(canvas, x + 8, CELLS[i] - 14);
            x += CELLS[i];
        }
    }

    private static String said(@org.jspecify.annotations.Nullable String name) {
        return name == null || name.isBlank() ? "not yet" : name;
    }

    /** Caption, bold head, further lines; as much as its place holds. */
    private record Cell(String caption, String head, List<String> lines) {
        void draw(Canvas canvas, double x, double width) {
            canvas.quiet(x, BLOCK_TOP + 12, 8, Anchor.START, caption);
            double feet = BLOCK_TOP + 26;
            if (!head.isBlank()) {
                canvas.bold(x, feet, 11, Anchor.START, Letters.cut(head, width, 11, true));
                feet += 13;
            }
            for (String line : lines) {
                for (String part : Letters.wrap(line, width, 8.5, false)) {
                    if (feet <= CAUTION_TOP - 3) {
                        canvas.text(x, feet, 8.5, Anchor.START, part);
                        feet += 10.9;
                    }
                }
            }
        }
    }
}
