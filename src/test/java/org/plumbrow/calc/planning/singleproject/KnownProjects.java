package org.plumbrow.calc.planning.singleproject;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Assumptions;

/**
 * The published projects (PSPLIB, replication 1 of j30, j60, j120) with the best bounds known, which stay outside the
 * program; a test that needs them is skipped where they are absent.
 *
 * @param lower no timetable is shorter, as published
 * @param upper the shortest timetable published
 */
public record KnownProjects(String name, SingleProject project, int lower, int upper) {

    private static final Path FOLDER =
            Path.of(System.getProperty("plumbrow.reference", "../shared/reference"), "psplib");

    /** @param set j30, j60 or j120 */
    public static List<KnownProjects> of(String set) {
        Path table = FOLDER.resolve("best-known.csv");
        Assumptions.assumeTrue(Files.exists(table), "the published projects are not here: " + FOLDER);
        return read(table)
                .lines()
                .map(line -> line.split(","))
                .filter(row -> Files.exists(file(set, row[0])))
                .map(row -> known(set, row))
                .toList();
    }

    /** Those of the set with these names. */
    public static List<KnownProjects> of(String set, String... names) {
        return of(set).stream()
                .filter(known -> Arrays.asList(names).contains(known.name()))
                .toList();
    }

    private static KnownProjects known(String set, String[] row) {
        return new KnownProjects(
                row[0], ProjectText.read(read(file(set, row[0]))), Integer.parseInt(row[1]), Integer.parseInt(row[2]));
    }

    private static Path file(String set, String name) {
        return FOLDER.resolve(set).resolve(name + ".sm");
    }

    private static String read(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
