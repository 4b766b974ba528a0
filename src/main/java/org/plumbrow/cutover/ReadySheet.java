package org.plumbrow.cutover;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.ReadyRows.Decision;
import org.plumbrow.cutover.ReadyRows.Go;
import org.plumbrow.cutover.ReadyRows.Said;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectTitle;

/**
 * Is the outage ready, the day before: what the records know, what people say, and who decided.
 *
 * @param window null while none is booked
 * @param decided the newest decision; null for none
 */
record ReadySheet(
        ProjectTitle title,
        ProjectFacts project,
        @Nullable OutageFacts window,
        List<Line> known,
        List<Item> items,
        @Nullable Go decided,
        boolean mayRun) {

    enum Light {
        READY,
        NOT_YET,
        RED
    }

    /** What the records know of one thing. */
    record Line(String what, Light light, String sentence) {
        public String shape() {
            return ReadySheet.shape(light);
        }
    }

    /** What people say of one thing. */
    record Item(ReadyItem item, Said said) {
        Light light() {
            return switch (said.state()) {
                case READY, NOT_HERE -> Light.READY;
                case NOT_YET -> Light.NOT_YET;
                case WRONG -> Light.RED;
            };
        }

        public String shape() {
            return said.state() == ReadyRows.State.NOT_HERE ? "na" : ReadySheet.shape(light());
        }
    }

    private static String shape(Light light) {
        return switch (light) {
            case READY -> "done";
            case NOT_YET -> "wait";
            case RED -> "trouble";
        };
    }

    /** Any red one: do not start. */
    public List<String> red() {
        return with(Light.RED);
    }

    public List<String> notYet() {
        return with(Light.NOT_YET);
    }

    private List<String> with(Light light) {
        return java.util.stream.Stream.concat(
                        known.stream().filter(line -> line.light == light).map(Line::what),
                        items.stream().filter(item -> item.light() == light).map(item -> item.item.words()))
                .toList();
    }

    /** What the page says first, as the key of the sentence. A go that was said does not outlive what has turned red. */
    public String headline() {
        if (window == null) {
            return "none";
        }
        if (!red().isEmpty() || decided != null && decided.decision() == Decision.NO_GO) {
            return "nogo";
        }
        if (decided != null && decided.decision() == Decision.GO && notYet().isEmpty()) {
            return "go";
        }
        return notYet().isEmpty() && decided == null ? "decide" : "notyet";
    }
}
