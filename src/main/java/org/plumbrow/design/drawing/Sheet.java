package org.plumbrow.design.drawing;

/**
 * A finished sheet, 17 by 11 inches in proportion.
 *
 * @param slug its name in an address, "one-line"
 * @param number as it stands in the title block, "E-1"
 * @param project name of the project
 * @param says what a colleague would say of it, for those who do not see it
 * @param canvas what stands on it, frame and all
 */
public record Sheet(String slug, String title, String number, String project, String says, Canvas canvas) {

    /** Whole document. */
    public String svg() {
        return Svg.of(canvas, number + " " + title + ", " + project, says);
    }
}
