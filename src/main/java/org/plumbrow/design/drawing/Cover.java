package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.plumbrow.calc.electrical.Verdict;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.PvArray;
import org.plumbrow.design.TitleBlock;
import org.plumbrow.design.check.DesignChecks;

/** The first sheet: whose system it is, what it is, what the rules say of it, what it takes, and where to find what. */
final class Cover {

    private static final double LEFT_WIDTH = 540;
    private static final double RIGHT_LEFT = 616;
    private static final double NAME = 26;
    private static final int MOST_OPEN = 8;

    private final DesignFacts facts;
    private final List<DesignChecks.Group> checks;

    Cover(DesignFacts facts, List<DesignChecks.Group> checks) {
        this.facts = facts;
        this.checks = checks;
    }

    /** All sheets with this one before them. @param inside the others, numbered */
    List<Drawn> before(List<Drawn> inside) {
        List<Drawn> front = front(inside, 1);
        if (front.size() > 1) {
            front = front(inside, front.size());
        }
        return Stream.concat(Drawings.numbered(front).stream(), inside.stream()).toList();
    }

    private List<Drawn> front(List<Drawn> inside, int own) {
        Canvas canvas = new Canvas();
        Flow left = new Flow(canvas, Frame.LEFT, head(canvas), LEFT_WIDTH);
        left.table(system());
        left.table(quantities(Frame.BOTTOM - left.y()));
        Flow right = new Flow(canvas, RIGHT_LEFT, Frame.TOP, Frame.RIGHT - RIGHT_LEFT);
        right.table(checks());
        open(right);
        right.table(index(inside, own));
        List<Canvas> canvases = new ArrayList<>(left.canvases());
        canvases.addAll(right.canvases().subList(1, right.canvases().size()));
        String says = "%s: %s in %s. %s."
                .formatted(
                        facts.sheet().projectName(),
                        size(),
                        Say.count(inside.size() + own, "sheet", "sheets"),
                        CheckSheets.summary(checks));
        return Drawn.all("cover", "Cover and index", "G", Drawn.NOT_TO_SCALE, says, canvases);
    }

    private String size() {
        return "%s, %s kW DC, %s kW AC"
                .formatted(
                        Say.count(facts.modules(), "module", "modules"),
                        Say.rounded(facts.kwDc(), 1),
                        Say.rounded(facts.kwAc(), 1));
    }

    /** @return lower edge */
    private double head(Canvas canvas) {
        TitleBlock sheet = facts.sheet();
        canvas.quiet(Frame.LEFT, Frame.TOP + 14, 12, Anchor.START, "Photovoltaic system, design packet");
        double feet = Frame.TOP + 46;
        for (String line : Letters.wrap(sheet.projectName(), LEFT_WIDTH, NAME, true)) {
            canvas.bold(Frame.LEFT, feet, NAME, Anchor.START, line);
            feet += NAME * Letters.LEADING;
        }
        String revision = facts.revision() == null
                ? "DRAFT, not frozen; it may change before anybody builds from it"
                : "Revision " + facts.revision();
        List<String> lines = new ArrayList<>();
        for (String line : List.of(sheet.projectNumber(), sheet.address(), size(), revision + ", " + sheet.date())) {
            lines.addAll(Letters.wrap(line, LEFT_WIDTH, 12, false));
        }
        double below = canvas.lines(Frame.LEFT, feet - 4, 12, Anchor.START, lines) + 2;
        return canvas.lines(Frame.LEFT, below, 9, Anchor.START, Letters.wrap(Frame.CAUTION, LEFT_WIDTH, 9, false)) + 4;
    }

    private Table system() {
        List<List<String>> rows = new ArrayList<>();
        for (PvArray array : facts.arrays()) {
            rows.add(List.of("Array " + array.mark(), array(array)));
        }
        counted(facts.inverters().stream()
                        .map(inverter -> inverter.type().name())
                        .toList())
                .forEach((name, count) -> rows.add(List.of("Inverters", count + " × " + name)));
        rows.add(List.of("Strings", String.valueOf(facts.strings().size())));
        rows.add(List.of(
                "Connection",
                Say.connection(facts.connection().kind())
                        + (facts.connection().place().isBlank()
                                ? ""
                                : ", " + facts.connection().place())));
        var service = facts.service();
        rows.add(List.of(
                "Service",
                (service.type() == null ? Say.UNKNOWN : service.type().words()) + ", main "
                        + Say.of(service.mainA(), "A") + ", bus " + Say.of(service.busA(), "A")));
        rows.add(List.of(
                "Utility",
                facts.sheet().utility().isBlank() ? Say.UNKNOWN : facts.sheet().utility()));
        rows.add(List.of("Code edition", facts.codeEdition().words()));
        rows.add(List.of("Design temperatures", temperatures()));
        return new Table("The system", List.of("What", "Figure"), rows);
    }

    private static String array(PvArray array) {
        return "%s: %s, %s kW, %s, tilt %s°, azimuth %s°"
                .formatted(
                        array.name(),
                        Say.count(array.modules(), "module", "modules"),
                        Say.rounded(array.kwDc(), 1),
                        array.mounting().words(),
                        Say.figure(array.tiltDeg()),
                        Say.figure(array.azimuthDeg()));
    }

    private String temperatures() {
        String source = facts.temperatureSource();
        return "lowest %s, 2 %% high %s%s"
                .formatted(
                        Say.of(facts.designLowC(), "°C"),
                        Say.of(facts.designHighC(), "°C"),
                        source == null ? "" : "; " + source);
    }

    private static Map<String, Integer> counted(List<String> names) {
        Map<String, Integer> counted = new LinkedHashMap<>();
        names.forEach(name -> counted.merge(name, 1, Integer::sum));
        return counted;
    }

    /** The whole bill where there is room for it, else the sums of its items. */
    private Table quantities(double room) {
        Quantities bill = Quantities.of(facts);
        Table whole = bill.table();
        return whole.height(LEFT_WIDTH) <= room ? whole : sums(bill);
    }

    private static Table sums(Quantities bill) {
        Map<String, Quantities.Line> sums = new LinkedHashMap<>();
        bill.lines()
                .forEach(line -> sums.merge(
                        line.group() + line.unit(),
                        line,
                        (sum, more) -> new Quantities.Line(
                                line.group(), "", sum.quantity() + more.quantity(), line.unit(), "")));
        return new Table(
                "What it takes, line by line on Q-1",
                List.of("Item", "Quantity"),
                sums.values().stream()
                        .map(line -> List.of(line.group(), line.amount()))
                        .toList());
    }

    private Table checks() {
        List<List<String>> rows = new ArrayList<>();
        checks.forEach(group -> rows.add(counts(group.title(), List.of(group))));
        rows.add(counts("All", checks));
        return new Table(
                "Checks by " + facts.codeEdition().words() + " and the rules beside it",
                List.of("About", "Fail", "Engineer", "Cannot tell", "Remark", "Pass"),
                rows);
    }

    private static List<String> counts(String title, List<DesignChecks.Group> groups) {
        List<String> counts = new ArrayList<>(List.of(title));
        for (Verdict verdict :
                List.of(Verdict.FAIL, Verdict.NEEDS_ENGINEER, Verdict.CANNOT_TELL, Verdict.REMARK, Verdict.PASS)) {
            counts.add(String.valueOf(DesignChecks.count(groups, verdict)));
        }
        return counts;
    }

    private void open(Flow flow) {
        List<List<String>> open = CheckSheets.open(checks).stream()
                .filter(row -> !row.get(0).equals(Verdict.REMARK.words()))
                .map(row -> List.of(row.get(0), row.get(1)))
                .toList();
        if (open.isEmpty()) {
            return;
        }
        int shown = Math.min(MOST_OPEN, open.size());
        String more = shown < open.size() ? ", the first " + shown + " of " + open.size() : "";
        flow.table(new Table("Open" + more + "; in full on C-1", List.of("Result", "Check"), open.subList(0, shown)));
    }

    /** One line a drawing, with all of its sheets. */
    private static Table index(List<Drawn> inside, int own) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("G-1", "Cover and index", "1"));
        int from = 0;
        for (int to = 1; to <= inside.size(); to++) {
            if (to == inside.size() || !inside.get(to).goesOnFrom(inside.get(from))) {
                rows.add(List.of(
                        range(inside.get(from).number(), inside.get(to - 1).number()),
                        inside.get(from).title(),
                        range(String.valueOf(from + own + 1), String.valueOf(to + own))));
                from = to;
            }
        }
        return new Table("Sheets", List.of("Sheet", "What it shows", "Page"), rows);
    }

    private static String range(String from, String to) {
        return from.equals(to) ? from : from + " to " + to;
    }
}
