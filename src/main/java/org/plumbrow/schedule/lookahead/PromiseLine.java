package org.plumbrow.schedule.lookahead;

/**
 * A project's line under the grid: its waits and work on the same days, the planned day and the promise. Lengths are
 * pixels of the picture; an empty path draws nothing.
 *
 * @param words what a colleague would say instead of the picture
 * @param evenX the day by which it is reached in one of two runs; negative when it lies outside the weeks shown
 * @param range a line from there to the day by which it is reached in four of five, with an end where that day is shown
 * @param chance "kept in 72 of 100 runs"; empty without a forecast
 * @param likely "; even chance Mon, Apr 12, four in five Tue, Apr 20", said where the marks lie outside; empty without a forecast
 * @param postX where the promised day ends; negative likewise
 */
record PromiseLine(
        ProjectLabel project,
        String shape,
        String outlook,
        String words,
        String waits,
        String work,
        String powerOff,
        String late,
        int evenX,
        String range,
        String chance,
        String likely,
        int postX,
        String postWords,
        int width) {

    public boolean breaks() {
        return shape.equals("trouble");
    }

    public boolean showsEven() {
        return evenX >= 0;
    }

    public boolean showsPost() {
        return postX >= 0;
    }

    /** Text stands left of a post near the right edge. */
    public String anchor() {
        return postX > width - 100 ? "end" : "start";
    }

    public int textX() {
        return anchor().equals("end") ? postX - 8 : postX + 8;
    }
}
