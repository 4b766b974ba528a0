package org.plumbrow.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.util.FileSystemUtils;

/** A demo for one test class alone, loaded anew: for what leaves it otherwise than others look at it. */
final class OwnDemo {

    private OwnDemo() {}

    static void in(String folder, DynamicPropertyRegistry properties) {
        Path data = Path.of("target", folder);
        try {
            FileSystemUtils.deleteRecursively(data);
        } catch (IOException still) {
            throw new UncheckedIOException(still);
        }
        properties.add("plumbrow.data-dir", data::toString);
    }
}
