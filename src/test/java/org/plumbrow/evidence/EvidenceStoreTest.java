package org.plumbrow.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.exif.ExifDirectoryBase;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Base64;
import java.util.UUID;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.transaction.support.TransactionTemplate;

@PlumbrowTest
class EvidenceStoreTest {

    @Autowired
    TestWorld world;

    @Autowired
    EvidenceStore store;

    @Autowired
    EvidenceSettings settings;

    @Autowired
    StoredFiles files;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    MockMvcTester mvc;

    private TestBranch branch;

    @BeforeEach
    void aBranch() {
        branch = world.branch();
    }

    private Keeping keep(String name, byte[] bytes) {
        return world.as(
                branch.projectManager(),
                () -> store.keep(
                        branch.id(),
                        null,
                        new Upload(name, bytes, ""),
                        branch.projectManager().actor()));
    }

    private EvidenceFacts kept(String name, byte[] bytes) {
        return ((Keeping.Kept) keep(name, bytes)).evidence();
    }

    private String refusal(String name, byte[] bytes) {
        return ((Keeping.Refused) keep(name, bytes)).sentence();
    }

    private StoredFiles.Content content(UUID id) {
        return world.as(
                branch.projectManager(),
                () -> transaction.execute(status -> files.content(id).orElseThrow()));
    }

    @Test
    void aPhotoIsTurnedUprightAndKeepsNothingOfTheCamera() throws Exception {
        EvidenceFacts photo = kept("IMG_0031.JPG", MadeUpPhoto.lyingOnItsSide());

        assertThat(photo.kind()).isEqualTo(EvidenceKind.PHOTO);
        assertThat(photo.takenAt()).isEqualTo(LocalDateTime.of(2027, 3, 1, 10, 31));
        byte[] bytes = content(photo.id()).bytes();
        BufferedImage upright = ImageIO.read(new ByteArrayInputStream(bytes));
        assertThat(upright.getWidth()).isEqualTo(300);
        assertThat(upright.getHeight()).isEqualTo(400);
        // The red bar on the left of the lying picture is on top of the upright one.
        assertThat(upright.getRGB(150, 5) & 0xFF).as("blue part, top").isLessThan(60);
        assertThat(upright.getRGB(150, 390) & 0xFF).as("blue part, bottom").isGreaterThan(200);
        assertThat(ImageMetadataReader.readMetadata(new ByteArrayInputStream(bytes))
                        .getDirectoriesOfType(ExifDirectoryBase.class))
                .isEmpty();
    }

    @Test
    void thePlaceOfAPhotoIsKeptOnlyWhereTheBranchWantsIt() {
        UUID without = kept("a.jpg", MadeUpPhoto.lyingOnItsSide()).id();
        TestBranch other = world.branch();
        world.as(other.manager(), () -> settings.choose(other.id(), true, 0));
        UUID with = ((Keeping.Kept) world.as(
                        other.manager(),
                        () -> store.keep(
                                other.id(),
                                null,
                                new Upload("a.jpg", MadeUpPhoto.lyingOnItsSide(), ""),
                                other.manager().actor())))
                .evidence()
                .id();

        assertThat(latitude(branch, without)).isNull();
        assertThat(latitude(other, with)).isCloseTo(41.5, within(1e-6));
    }

    private Double latitude(TestBranch where, UUID id) {
        return world.as(
                where.manager(),
                () -> transaction.execute(status -> jdbc.sql("select latitude_deg from evidence where id = ?")
                        .param(id)
                        .query((row, n) -> row.getBigDecimal(1) == null ? null : row.getDouble(1))
                        .list()
                        .get(0)));
    }

    @Test
    void theSameFileIsKeptOnce() {
        UUID first = kept("a.jpg", MadeUpPhoto.plain()).id();
        UUID second = kept("b.jpg", MadeUpPhoto.plain()).id();

        assertThat(first).isNotEqualTo(second);
        assertThat(stored(branch)).isEqualTo(1);
    }

    private long stored(TestBranch where) {
        return world.as(
                where.manager(),
                () -> transaction.execute(status -> jdbc.sql("select count(*) from stored_file where branch_id = ?")
                        .param(where.id())
                        .query(Long.class)
                        .single()));
    }

    @Test
    void aFileIsWhatItsBytesSay() {
        assertThat(kept("plan.jpg", "%PDF-1.7\n%%EOF".getBytes(StandardCharsets.US_ASCII))
                        .kind())
                .isEqualTo(EvidenceKind.DOCUMENT);
        assertThat(refusal("photo.jpg", "<html><script>alert(1)</script>".getBytes(StandardCharsets.UTF_8)))
                .startsWith("A text file has to end in");
        assertThat(refusal("photo.jpg", new byte[] {0, 1, 2, 3, 4, 5, 6, 7})).contains("neither a JPEG or PNG picture");
        assertThat(refusal("empty.pdf", new byte[0])).isEqualTo("The file is empty. Choose it again.");
    }

    @Test
    void aPhonesOwnFormatIsRefusedWithWhatToDo() {
        byte[] heic = "\0\0\0\030ftypheic\0\0\0\0mif1heic".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(refusal("IMG_1.HEIC", heic)).contains("most compatible");
    }

    @Test
    void aTruncatedPictureIsRefused() {
        byte[] whole = MadeUpPhoto.jpeg(1200, 900);
        assertThat(refusal("cut.jpg", Arrays.copyOf(whole, 300))).contains("cannot be opened");
    }

    @Test
    void aLargePhotoIsRefusedByItsBytesAndByItsPixels() {
        byte[] heavy = Arrays.copyOf(MadeUpPhoto.plain(), 24 * 1024 * 1024);
        assertThat(refusal("heavy.jpg", heavy))
                .isEqualTo("The photo is 24 MB; up to 20 MB fit. Take it again at normal size.");
        assertThat(refusal("bomb.png", pngThatClaims(60_000, 60_000))).contains("3600 megapixels");
    }

    /** A file of a few hundred bytes that says it is a picture of 3.6 gigapixels. */
    private static byte[] pngThatClaims(int width, int height) {
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            out.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
            java.nio.ByteBuffer head = java.nio.ByteBuffer.allocate(13);
            head.putInt(width).putInt(height).put((byte) 1).put((byte) 0).put(new byte[3]);
            chunk(out, "IHDR", head.array());
            ByteArrayOutputStream rows = new ByteArrayOutputStream();
            try (DeflaterOutputStream deflated = new DeflaterOutputStream(rows)) {
                deflated.write(new byte[1000]);
            }
            chunk(out, "IDAT", rows.toByteArray());
            chunk(out, "IEND", new byte[0]);
            return out.toByteArray();
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static void chunk(ByteArrayOutputStream out, String type, byte[] data) {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 crc = new CRC32();
        crc.update(name);
        crc.update(data);
        out.writeBytes(java.nio.ByteBuffer.allocate(4).putInt(data.length).array());
        out.writeBytes(name);
        out.writeBytes(data);
        out.writeBytes(
                java.nio.ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
    }

    @Test
    void aSignatureKeepsTheNameTheTradeAndTheWords() throws Exception {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(40, 20, BufferedImage.TYPE_INT_ARGB), "png", png);
        String drawn = "data:image/png;base64," + Base64.getEncoder().encodeToString(png.toByteArray());

        EvidenceFacts signed = ((Keeping.Kept)
                        sign(new NewSignature("Sil", "electrician", "Locked, tagged, tried.", drawn)))
                .evidence();

        assertThat(signed.signature())
                .isEqualTo(new EvidenceFacts.Signature("Sil", "electrician", "Locked, tagged, tried.", true));
        assertThat(((Keeping.Refused) sign(new NewSignature(" ", "", "x", null))).sentence())
                .isEqualTo("Write the name of the person who signs.");
        assertThat(((Keeping.Refused) sign(new NewSignature("Sil", "", "x", "data:text/html;base64,PGI+"))).sentence())
                .contains("did not arrive whole");
    }

    private Keeping sign(NewSignature signature) {
        return world.as(
                branch.crewLead(),
                () -> store.sign(branch.id(), null, signature, branch.crewLead().actor()));
    }

    @Test
    void anotherBranchsFileIsNotThere() {
        UUID photo = kept("a.jpg", MadeUpPhoto.plain()).id();
        TestBranch other = world.branch();

        assertThat(mvc.get().uri("/evidence/{id}", photo).with(world.signedIn(branch.designer())))
                .hasStatus(200);
        assertThat(mvc.get().uri("/evidence/{id}", photo).with(world.signedIn(other.manager())))
                .hasStatus(404);
        assertThat(mvc.get().uri("/evidence/{id}/thumbnail", photo).with(world.signedIn(other.manager())))
                .hasStatus(404);
    }

    @Test
    void aPhotoIsShownAndAnythingElseIsSavedAndNothingRuns() {
        UUID photo = kept("a.jpg", MadeUpPhoto.plain()).id();
        UUID data = kept("use \"Barn 2\".csv", "month,kWh\n2026-01,100\n".getBytes(StandardCharsets.UTF_8))
                .id();

        var shown = mvc.get()
                .uri("/evidence/{id}", photo)
                .with(world.signedIn(branch.manager()))
                .exchange();
        var saved = mvc.get()
                .uri("/evidence/{id}", data)
                .with(world.signedIn(branch.manager()))
                .exchange();

        assertThat(shown.getResponse().getHeader("Content-Disposition")).startsWith("inline");
        assertThat(saved.getResponse().getHeader("Content-Disposition")).startsWith("attachment");
        for (var each :
                new org.springframework.mock.web.MockHttpServletResponse[] {shown.getResponse(), saved.getResponse()}) {
            assertThat(each.getHeader("X-Content-Type-Options")).isEqualTo("nosniff");
            assertThat(each.getHeaders("Content-Security-Policy"))
                    .singleElement()
                    .asString()
                    .contains("sandbox");
            assertThat(each.getHeader("Cache-Control")).contains("private");
        }
    }

    @Test
    void whatIsHiddenStaysKeptAndOnlyThoseWhoMayEditSeeIt() {
        UUID photo = kept("a.jpg", MadeUpPhoto.plain()).id();
        assertThat(world.as(
                        branch.manager(),
                        () -> store.hide(
                                photo, "A child is in it.", branch.manager().actor())))
                .isTrue();

        assertThat(mvc.get().uri("/evidence/{id}", photo).with(world.signedIn(branch.designer())))
                .hasStatus(404);
        assertThat(mvc.get().uri("/evidence/{id}", photo).with(world.signedIn(branch.manager())))
                .hasStatus(200);
    }

    @Test
    void aKeptFileCannotBeChangedOrErased() {
        kept("a.jpg", MadeUpPhoto.plain());
        for (String change : new String[] {
            "update stored_file set media_type = 'image/png'", "delete from stored_file", "truncate stored_file cascade"
        }) {
            assertThatThrownBy(() -> world.as(
                            branch.manager(),
                            () -> transaction.execute(status -> jdbc.sql(change).update())))
                    .isInstanceOf(DataAccessException.class)
                    .hasMessageContaining("append-only");
        }
    }
}
