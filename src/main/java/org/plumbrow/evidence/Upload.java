package org.plumbrow.evidence;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.springframework.web.multipart.MultipartFile;

/**
 * A file as somebody brings it.
 *
 * @param name the name it had, for showing only
 */
public record Upload(String name, byte[] bytes, String caption) {

    public static Upload of(MultipartFile file, String caption) {
        String name = file.getOriginalFilename();
        try {
            return new Upload(name == null || name.isBlank() ? "file" : name, file.getBytes(), caption);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
