package org.plumbrow.evidence;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.lang.GeoLocation;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import com.drew.metadata.exif.GpsDirectory;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Iterator;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import net.coobird.thumbnailator.Thumbnails;
import org.jspecify.annotations.Nullable;

/**
 * A picture turned upright and written anew: so it holds nothing but the picture. What the camera wrote into the file
 * (when, where) is read first.
 *
 * @param takenAt by the camera's clock, without a zone
 */
record Photo(
        byte[] bytes,
        byte[] thumbnail,
        @Nullable LocalDateTime takenAt,
        @Nullable GeoLocation place) {

    static final long MOST_PIXELS = 50_000_000;
    private static final int THUMBNAIL_PX = 480;
    private static final DateTimeFormatter CAMERA_TIME = DateTimeFormatter.ofPattern("yyyy:MM:dd HH:mm:ss");
    /** A picture of 50 megapixels takes some 200 MB while it is open: two at a time. */
    private static final Semaphore OPEN = new Semaphore(2);

    /** Says what is wrong with the picture and what to do. */
    static final class Unreadable extends Exception {
        Unreadable(String sentence) {
            super(sentence);
        }
    }

    static Photo of(byte[] original, FileType type) throws Unreadable {
        checkSize(original);
        Metadata metadata = metadata(original);
        OPEN.acquireUninterruptibly();
        try {
            BufferedImage upright = Thumbnails.of(new ByteArrayInputStream(original))
                    .scale(1)
                    .useExifOrientation(true)
                    .asBufferedImage();
            String format = type == FileType.PNG ? "png" : "jpg";
            return new Photo(
                    written(upright, format),
                    thumbnail(upright),
                    takenAt(metadata).orElse(null),
                    place(metadata).orElse(null));
        } catch (IOException | IllegalArgumentException | ArrayIndexOutOfBoundsException damaged) {
            throw new Unreadable("The picture cannot be opened; it may have been cut off on the way. Take it again.");
        } finally {
            OPEN.release();
        }
    }

    /** Reads only the head of the file: a small file may claim to be a very large picture. */
    private static void checkSize(byte[] original) throws Unreadable {
        try (ImageInputStream stream = ImageIO.createImageInputStream(new ByteArrayInputStream(original))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
            if (!readers.hasNext()) {
                throw new Unreadable("The picture cannot be opened. Take it again.");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(stream);
                long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
                if (pixels > MOST_PIXELS) {
                    throw new Unreadable("The picture has " + pixels / 1_000_000
                            + " megapixels; up to 50 fit. Take it again at normal size.");
                }
            } finally {
                reader.dispose();
            }
        } catch (IOException | IndexOutOfBoundsException | IllegalArgumentException damaged) {
            throw new Unreadable("The picture cannot be opened; it may have been cut off on the way. Take it again.");
        }
    }

    private static byte[] written(BufferedImage picture, String format) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Thumbnails.of(picture).scale(1).outputQuality(0.88).outputFormat(format).toOutputStream(out);
        return out.toByteArray();
    }

    private static byte[] thumbnail(BufferedImage picture) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        boolean small = picture.getWidth() <= THUMBNAIL_PX && picture.getHeight() <= THUMBNAIL_PX;
        var shrunk =
                small ? Thumbnails.of(picture).scale(1) : Thumbnails.of(picture).size(THUMBNAIL_PX, THUMBNAIL_PX);
        shrunk.imageType(BufferedImage.TYPE_INT_RGB)
                .outputQuality(0.8)
                .outputFormat("jpg")
                .toOutputStream(out);
        return out.toByteArray();
    }

    /** A file without readable notes of the camera has none; that is no fault of the picture. */
    private static Metadata metadata(byte[] original) {
        try {
            return ImageMetadataReader.readMetadata(new ByteArrayInputStream(original));
        } catch (ImageProcessingException | IOException unreadable) {
            return new Metadata();
        }
    }

    private static Optional<LocalDateTime> takenAt(Metadata metadata) {
        return Optional.ofNullable(metadata.getFirstDirectoryOfType(ExifSubIFDDirectory.class))
                .map(exif -> exif.getString(ExifSubIFDDirectory.TAG_DATETIME_ORIGINAL))
                .flatMap(Photo::cameraTime);
    }

    private static Optional<LocalDateTime> cameraTime(String written) {
        try {
            return Optional.of(LocalDateTime.parse(written.strip(), CAMERA_TIME));
        } catch (DateTimeParseException unset) {
            return Optional.empty();
        }
    }

    private static Optional<GeoLocation> place(Metadata metadata) {
        return Optional.ofNullable(metadata.getFirstDirectoryOfType(GpsDirectory.class))
                .map(GpsDirectory::getGeoLocation)
                .filter(place -> !place.isZero());
    }
}
