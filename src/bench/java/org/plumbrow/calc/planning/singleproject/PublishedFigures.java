package org.plumbrow.calc.planning.singleproject;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.plumbrow.calc.planning.singleproject.proof.MakespanProof;
import org.plumbrow.calc.planning.singleproject.proof.ProvenTimetable;

/**
 * The published projects against the best bounds known. Arguments: set (j30, j60, j120), and unless the usual ones are meant
 * schedules of the search before (20,000) and seconds in all (5 for j30, else 30); 0 seconds is the search alone. Each
 * project is one line of {@code target/published-SET-SCHEDULES-SECONDS.csv}; a run that was stopped goes on behind the last
 * line. The figures over all lines are printed at the end.
 */
public final class PublishedFigures {

    private static final int SEED = 1;
    private static final long USUAL_SCHEDULES = 20_000;

    private record Line(String name, int path, int lower, int upper, int proved, int found, double seconds) {

        static Line of(String text) {
            String[] cells = text.split(",");
            return new Line(
                    cells[0],
                    Integer.parseInt(cells[1]),
                    Integer.parseInt(cells[2]),
                    Integer.parseInt(cells[3]),
                    Integer.parseInt(cells[4]),
                    Integer.parseInt(cells[5]),
                    Double.parseDouble(cells[6]));
        }

        String text() {
            return String.format(
                    Locale.ROOT, "%s,%d,%d,%d,%d,%d,%.2f%n", name, path, lower, upper, proved, found, seconds);
        }
    }

    private PublishedFigures() {}

    public static void main(String[] arguments) throws IOException {
        String set = arguments[0];
        long schedules = arguments.length > 1 ? Long.parseLong(arguments[1]) : USUAL_SCHEDULES;
        int seconds = arguments.length > 2 ? Integer.parseInt(arguments[2]) : set.equals("j30") ? 5 : 30;
        Path lines = Path.of("target", "published-%s-%d-%d.csv".formatted(set, schedules, seconds));
        Set<String> done = new HashSet<>();
        for (Line line : read(lines)) {
            done.add(line.name());
        }
        for (KnownProjects known : KnownProjects.of(set)) {
            if (!done.contains(known.name())) {
                String line = measured(known, schedules, seconds).text();
                Files.writeString(lines, line, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
                System.out.print(line);
            }
        }
        print(set, read(lines));
    }

    private static List<Line> read(Path lines) throws IOException {
        return Files.exists(lines)
                ? Files.readAllLines(lines).stream().map(Line::of).toList()
                : List.of();
    }

    private static Line measured(KnownProjects known, long schedules, double seconds) {
        SingleProject project = known.project();
        long begun = System.nanoTime();
        Timetable found = ListEvolution.best(project, schedules, SEED);
        int lower = project.criticalPath();
        double left = seconds - (System.nanoTime() - begun) / 1e9;
        if (left > 0) {
            ProvenTimetable proven = MakespanProof.run(project, found, left, SEED, System::nanoTime);
            found = proven.best();
            lower = proven.lower();
        }
        double took = (System.nanoTime() - begun) / 1e9;
        if (!TimetableCheck.faults(project, found).isEmpty()
                || found.makespan() < known.lower()
                || lower > known.upper()) {
            throw new IllegalStateException(
                    known + ": " + found + ", at least " + lower + ": one of them or of the published bounds is wrong");
        }
        return new Line(
                known.name(), project.criticalPath(), known.lower(), known.upper(), lower, found.makespan(), took);
    }

    private static void print(String set, List<Line> lines) {
        System.out.println("set projects proved over-best-known-% proven-gap-% over-critical-path-% mean-s longest-s");
        System.out.printf(
                Locale.ROOT,
                "%s %d %d %.2f %.2f %.2f %.2f %.2f%n",
                set,
                lines.size(),
                lines.stream().filter(line -> line.proved() == line.found()).count(),
                mean(lines, line -> 100.0 * (line.found() - line.upper()) / line.upper()),
                mean(lines, line -> 100.0 * (line.found() - line.proved()) / line.proved()),
                mean(lines, line -> 100.0 * (line.found() - line.path()) / line.path()),
                mean(lines, Line::seconds),
                lines.stream().mapToDouble(Line::seconds).max().orElse(0));
    }

    private static double mean(List<Line> lines, java.util.function.ToDoubleFunction<Line> figure) {
        return lines.stream().mapToDouble(figure).average().orElse(0);
    }
}
