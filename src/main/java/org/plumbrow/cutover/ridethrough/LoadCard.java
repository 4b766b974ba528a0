package org.plumbrow.cutover.ridethrough;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.plumbrow.calc.ridethrough.Caution;
import org.plumbrow.calc.ridethrough.LimitTime;
import org.plumbrow.calc.ridethrough.RideThrough;

/**
 * One thing on the site and how long it stands at the hour asked for.
 *
 * @param answers as it stands, then other ways it could: closed, with the air alone
 * @param inputs what people wrote and the weather of the hour, opened from the figure
 */
public record LoadCard(LoadKind kind, String name, int outageMinutes, List<Way> answers, List<Input> inputs) {

    private static final int MINUTES_AS_HOURS = 120;
    private static final int TIMES_OUTAGE = 2;

    /** @param words "with curtains closed" */
    public record Way(String words, RideThrough answer) {
        public String range() {
            return LoadCard.range(answer);
        }
    }

    public record Input(String what, String value) {}

    public LoadCard {
        answers = List.copyOf(answers);
        inputs = List.copyOf(inputs);
    }

    public RideThrough first() {
        return answers.get(0).answer();
    }

    public List<Way> others() {
        return answers.subList(1, answers.size());
    }

    /** "9 min to 17 min"; a range always, where there is any figure. */
    public String range() {
        return range(first());
    }

    static String range(RideThrough answer) {
        OptionalDouble shortEnd = answer.shortEnd();
        if (!answer.hasFigure()) {
            return "";
        }
        if (shortEnd.isEmpty()) {
            return "no limit within " + words(answer.horizonMinutes());
        }
        OptionalDouble longEnd = answer.longEnd();
        return words(shortEnd.getAsDouble()) + " to "
                + (longEnd.isPresent() ? words(longEnd.getAsDouble()) : "more than " + words(answer.horizonMinutes()));
    }

    /** Minutes rounded down: nobody is told more than was computed. */
    public static String words(double minutes) {
        long whole = (long) Math.floor(minutes + 1e-9);
        return whole < MINUTES_AS_HOURS
                ? whole + " min"
                : String.format(Locale.US, "%,d h", whole / 60) + (whole % 60 == 0 ? "" : " " + whole % 60 + " min");
    }

    public static String words(OptionalDouble minutes, double horizon) {
        return minutes.isPresent() ? words(minutes.getAsDouble()) : "more than " + words(horizon);
    }

    /** Half of the short end: what is planned with. */
    public String planned() {
        return first().planned().isPresent() ? words(first().planned().getAsDouble()) : "";
    }

    /** talk, short, half, opens or long: how the short end lies to the planned outage. There is no word for safe. */
    public String alarm() {
        String asItStands = alarmAsItStands();
        return asItStands.equals("long") && shortEnd(unopened()) < TIMES_OUTAGE * outageMinutes ? "opens" : asItStands;
    }

    /** The house if curtains or vents do not open after all; as it stands where it has none. */
    RideThrough unopened() {
        return kind == LoadKind.HOUSES && answers.size() > 2 ? answers.get(1).answer() : first();
    }

    /** "14 min to 1 h": what is left if they do not open. */
    public String unopenedRange() {
        return range(unopened());
    }

    private static double shortEnd(RideThrough answer) {
        return answer.shortEnd().orElse(Double.POSITIVE_INFINITY);
    }

    private String alarmAsItStands() {
        if (!first().hasFigure()) {
            return kind == LoadKind.HOME && !first().cautions().contains(Caution.MEDICAL) ? "nothing" : "talk";
        }
        double shortEnd = shortEnd(first());
        return shortEnd < outageMinutes ? "short" : shortEnd < TIMES_OUTAGE * outageMinutes ? "half" : "long";
    }

    public String shape() {
        return switch (alarm()) {
            case "short", "talk" -> "trouble";
            case "half", "opens" -> "risk";
            default -> "wait";
        };
    }

    public List<String> cautions() {
        return first().cautions().stream().sorted().map(Caution::sentence).toList();
    }

    /** A limit's row of the table. */
    public record Row(String what, String limit, String shortEnd, String likely, String longEnd, String source) {}

    public List<Row> rows() {
        return first().times().stream().map(this::row).toList();
    }

    private Row row(LimitTime time) {
        double horizon = first().horizonMinutes();
        return new Row(
                time.limit().kind().words(),
                limit(time),
                words(time.shortEnd(), horizon),
                words(time.likely(), horizon),
                words(time.longEnd(), horizon),
                time.limit().source());
    }

    private static String limit(LimitTime time) {
        double value = time.limit().value();
        return time.limit().kind().unit().equals("degC")
                ? String.format(Locale.US, "%.0f °F (%.1f °C)", UsUnits.fahrenheit(value), value)
                        .replace('-', '−')
                : (String.format(Locale.US, "%.4g", value).replaceAll("\\.?0+$", "") + " "
                                + time.limit().kind().unit())
                        .strip();
    }

    public String binding() {
        return first().binding().map(time -> time.limit().kind().words()).orElse("");
    }
}
