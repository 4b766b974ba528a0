package org.plumbrow.cutover.daylog;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.CutoverWay;
import org.plumbrow.cutover.CutoverWay.Opening;

/** The procedure as it is on one site: where the power is taken, what is opened and locked, what is connected. Pure. */
record FittedSteps(CutoverWay way) {

    private static final String WARN = " Warn everybody: large motors may start by themselves.";

    LogStep fitted(LogStep step) {
        return switch (step.code()) {
            case "3" -> with(step, step.words(), through(step.what()), step.who(), null);
            case "4" -> taken(step);
            case "5" -> with(step, step.words(), locks(), step.who(), null);
            case "6" -> with(step, step.words(), step.what() + where(), step.who(), null);
            case "7" -> with(step, step.words(), capital(way.connection()) + ". " + step.what(), step.who(), null);
            case "10" -> brought(step);
            case "H4" -> with(step, isThreePhase() ? step.words() : "Voltage right", step.what(), step.who(), null);
            case "12" -> with(step, step.words(), through(step.what()), step.who(), null);
            case "13" -> with(step, step.words(), step.what() + opened(" Array: "), step.who(), null);
            default -> step;
        };
    }

    private boolean isThreePhase() {
        return way.drawnService().map(service -> service.isThreePhase()).orElse(true);
    }

    private LogStep taken(LogStep step) {
        String first = "Open first: inverters, " + devices() + ", main. ";
        String tap = " Tap when the power goes off.";
        return switch (way.opening()) {
            case METER ->
                with(
                        step,
                        "Utility removes the meter",
                        first + "The utility’s technician takes the meter out and covers its base." + tap,
                        "Utility",
                        "who of the utility removes the meter");
            case TRANSFORMER ->
                with(
                        step,
                        "Utility opens at the transformer",
                        first + "The meter on current transformers stays; the utility opens at the transformer." + tap,
                        "Utility",
                        "who of the utility opens at the transformer");
            case UTILITY ->
                with(
                        step,
                        step.words(),
                        first + "The utility opens the service where it decides." + tap,
                        "Utility",
                        "who of the utility opens the service");
            case MAIN ->
                with(
                        step,
                        "Main opened",
                        first + "The meter stays: the wires from it to the main remain live." + tap,
                        "Electrician",
                        null);
        };
    }

    private LogStep brought(LogStep step) {
        String pairs = isThreePhase() ? "every pair and the rotation" : "every pair";
        String read = "Read " + pairs + " on the line side as in step 2, the main still open." + WARN;
        return switch (way.opening()) {
            case METER -> with(step, "Utility sets the meter", read, step.who(), "who of the utility sets the meter");
            case TRANSFORMER ->
                with(
                        step,
                        "Utility closes at the transformer",
                        read,
                        step.who(),
                        "who of the utility closes at the transformer");
            case UTILITY -> with(step, step.words(), read, step.who(), "who of the utility closes the service");
            case MAIN -> with(step, "Line side of the main read", read, "Electrician", null);
        };
    }

    private String locks() {
        String service = switch (way.opening()) {
            case METER -> "the empty meter base, ";
            case TRANSFORMER, UTILITY -> "the service, ";
            case MAIN -> "the main, ";
        };
        String generator = way.transfer().isEmpty() ? "" : ", generator path: " + way.transfer();
        return "Lock and tag " + service + devices() + generator + ", batteries. Each worker hangs an own lock.";
    }

    private String where() {
        return way.opening() == Opening.MAIN
                ? " On the bus and where the breaker goes. The line side of the main stays live: cover it, keep away."
                : " At the place of the connection, " + way.connection() + ".";
    }

    private String through(String what) {
        return way.transfer().isEmpty() ? what : what + " Here: " + way.transfer() + ".";
    }

    private String opened(String before) {
        return way.devices().isEmpty() ? "" : before + devices() + ".";
    }

    private String devices() {
        return way.devices().isEmpty() ? "array disconnects" : String.join(", ", way.devices());
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static LogStep with(LogStep step, String words, String what, String who, @Nullable String named) {
        return new LogStep(
                step.code(),
                step.position(),
                step.hold(),
                words,
                what,
                who,
                step.typicalMinutes(),
                step.whyNot(),
                named);
    }
}
