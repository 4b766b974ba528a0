package org.plumbrow.estimate.site;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.branch.ChangeLog;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.energy.weather.MonthlyMeans;
import org.plumbrow.calc.energy.weather.WeatherFiles;
import org.plumbrow.calc.energy.weather.WeatherFinding;
import org.plumbrow.calc.energy.weather.WeatherReading;
import org.plumbrow.calc.energy.weather.WeatherYear;
import org.plumbrow.calc.energy.weather.WeatherYear.Origin;
import org.plumbrow.database.Ids;
import org.plumbrow.estimate.site.WeatherRows.From;
import org.plumbrow.evidence.EvidenceStore;
import org.plumbrow.evidence.Keeping;
import org.plumbrow.evidence.Upload;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The typical years that a branch has: brought as files or typed as twelve means, each read once and kept as it came. */
@Service
@Transactional
public class WeatherLibrary {

    private static final int LONGEST_NAME = 120;

    private final WeatherRows rows;
    private final EvidenceStore evidence;
    private final ChangeLog log;
    private final Access access;
    private final Clock clock;

    WeatherLibrary(WeatherRows rows, EvidenceStore evidence, ChangeLog log, Access access, Clock clock) {
        this.rows = rows;
        this.evidence = evidence;
        this.log = log;
        this.access = access;
        this.clock = clock;
    }

    /** What became of weather that somebody brought. */
    public sealed interface Bringing {

        record Kept(UUID id) implements Bringing {}

        /** @param sentences each says what is wrong, with its line where there is one, and what to do */
        record Refused(List<String> sentences) implements Bringing {}
    }

    /**
     * @param name what people will call it; empty for the station's own name
     * @param invented somebody made it up
     */
    public Bringing bring(UUID branchId, Upload upload, String name, boolean invented) {
        access.require(branchId, May.EDIT_PROJECT);
        byte[] hash = sha256(upload.bytes());
        Optional<String> here = rows.nameOf(branchId, hash);
        if (here.isPresent()) {
            return refused("This file is in the library already, as “%s”.".formatted(here.get()));
        }
        String text = FileText.of(upload.bytes());
        WeatherReading reading = WeatherFiles.read(text);
        if (reading instanceof WeatherReading.Read read) {
            return keep(branchId, upload, new Named(name, invented), read.year(), text, hash);
        }
        return new Bringing.Refused(
                reading.findings().stream().map(WeatherFinding::sentence).toList());
    }

    private record Named(String name, boolean invented) {}

    private Bringing keep(UUID branchId, Upload upload, Named named, WeatherYear year, String text, byte[] hash) {
        Upload kept = new Upload(withEnding(upload.name(), year.origin()), upload.bytes(), "Weather file");
        Keeping keeping = evidence.keep(branchId, null, kept, access.actor());
        if (keeping instanceof Keeping.Refused no) {
            return refused(no.sentence());
        }
        UUID file = ((Keeping.Kept) keeping).evidence().id();
        String years = YearsOfFile.of(year.origin(), text);
        return new Bringing.Kept(add(branchId, year, years, named, new From(file, hash, null)));
    }

    /** The evidence room tells weather files by their ending; the reader has seen what it is. */
    private static String withEnding(String name, Origin origin) {
        String ending = switch (origin) {
            case EPW -> ".epw";
            case TM2 -> ".tm2";
            default -> ".csv";
        };
        return name.toLowerCase(java.util.Locale.ROOT).endsWith(ending) ? name : name + ending;
    }

    /**
     * A year made from twelve means.
     *
     * @throws org.plumbrow.calc.Range.OutOfRange if a month has more radiation than the sun sends there
     */
    public UUID type(UUID branchId, String name, boolean invented, MonthlyMeans means) {
        access.require(branchId, May.EDIT_PROJECT);
        WeatherYear year = means.typicalYear();
        return add(branchId, year, "", new Named(name, invented), new From(null, null, means));
    }

    private UUID add(UUID branchId, WeatherYear year, String years, Named named, From from) {
        UUID id = Ids.next();
        WeatherCard card = new WeatherCard(
                id,
                branchId,
                0,
                name(named.name, year),
                year.origin(),
                year.station(),
                year.place(),
                named.invented,
                from.evidenceId(),
                WeatherSummary.of(year, years),
                clock.instant(),
                access.actor().name(),
                null);
        rows.insert(card, from, access.actor());
        log.added(branchId, access.actor(), "weather " + card.name(), written(card));
        return id;
    }

    private static String name(String given, WeatherYear year) {
        String name = given.isBlank() ? year.station().strip() : given.strip();
        String known = name.isEmpty()
                ? "Weather at %.2f, %.2f"
                        .formatted(year.place().latitudeDeg(), year.place().longitudeDeg())
                : name;
        return known.substring(0, Math.min(known.length(), LONGEST_NAME));
    }

    static List<Written> written(WeatherCard card) {
        return List.of(
                Written.of("Name", "name", card.name()),
                Written.of("Kind", "origin", card.origin().name(), card.kind()),
                Written.of("Made up", "invented", card.invented(), card.invented() ? "yes" : "no"));
    }

    @Transactional(readOnly = true)
    public List<WeatherCard> ofBranch(UUID branchId) {
        access.require(branchId, May.SEE_ESTIMATE);
        return rows.ofBranch(branchId);
    }

    /** @throws NotFound if it is not there for the person who asks */
    @Transactional(readOnly = true)
    public WeatherCard card(UUID id) {
        WeatherCard card = rows.find(id).orElseThrow(NotFound::new);
        access.require(card.branchId(), May.SEE_ESTIMATE);
        return card;
    }

    @Transactional(readOnly = true)
    public int projectsThatChose(UUID id) {
        return rows.usedBy(id);
    }

    /** @throws EditedMeanwhile if somebody was faster */
    public void rename(UUID id, long version, String name, boolean invented) {
        WeatherCard before = editable(id);
        if (!rows.rename(id, version, name.strip(), invented)) {
            throw new EditedMeanwhile(version, before.version());
        }
        WeatherCard after = rows.find(id).orElseThrow(NotFound::new);
        log.changed(before.branchId(), access.actor(), "weather " + before.name(), written(before), written(after));
    }

    /** No longer offered; a project that chose it keeps it. */
    public void end(UUID id) {
        WeatherCard card = editable(id);
        if (!card.ended()) {
            rows.end(id, clock.instant());
            log.happened(card.branchId(), access.actor(), "weather " + card.name(), "Offered", "yes", "no");
        }
    }

    public void offerAgain(UUID id) {
        WeatherCard card = editable(id);
        if (card.ended()) {
            rows.end(id, null);
            log.happened(card.branchId(), access.actor(), "weather " + card.name(), "Offered", "no", "yes");
        }
    }

    private WeatherCard editable(UUID id) {
        WeatherCard card = rows.find(id).orElseThrow(NotFound::new);
        access.require(card.branchId(), May.EDIT_PROJECT);
        return card;
    }

    private static Bringing refused(String sentence) {
        return new Bringing.Refused(List.of(sentence));
    }

    private static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
