package org.plumbrow.estimate.site;

import java.time.Clock;
import java.time.YearMonth;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.calc.finance.use.UseChannel;
import org.plumbrow.calc.finance.use.UseFinding;
import org.plumbrow.calc.finance.use.UseHours;
import org.plumbrow.calc.finance.use.UseReading;
import org.plumbrow.calc.finance.use.UseYear;
import org.plumbrow.database.Ids;
import org.plumbrow.estimate.site.UseMeter.Kind;
import org.plumbrow.estimate.site.UseMeter.TypedUse;
import org.plumbrow.evidence.EvidenceStore;
import org.plumbrow.evidence.Keeping;
import org.plumbrow.evidence.Upload;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.gate.Gates;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What a project's site uses: meters that are brought, corrected, counted or taken away, and their sum worked out anew. */
@Service
@Transactional
public class UseBook {

    private final UseMeters meters;
    private final UseYears years;
    private final MeterReadings readings;
    private final EvidenceStore evidence;
    private final BranchSettings settings;
    private final ProjectAccess projectAccess;
    private final Journal journal;
    private final Gates gates;
    private final Access access;
    private final Clock clock;

    UseBook(
            UseMeters meters,
            UseYears years,
            MeterReadings readings,
            EvidenceStore evidence,
            BranchSettings settings,
            ProjectAccess projectAccess,
            Journal journal,
            Gates gates,
            Access access,
            Clock clock) {
        this.meters = meters;
        this.years = years;
        this.readings = readings;
        this.evidence = evidence;
        this.settings = settings;
        this.projectAccess = projectAccess;
        this.journal = journal;
        this.gates = gates;
        this.access = access;
        this.clock = clock;
    }

    /** What became of a file that somebody brought. */
    public sealed interface Bringing {

        record Kept(UUID meterId) implements Bringing {}

        /** @param preview the first rows as they were understood; empty where it is no table */
        record Refused(String sentence, List<List<String>> preview) implements Bringing {}
    }

    /**
     * Months typed from the bills; they count at once.
     *
     * @throws org.plumbrow.calc.Range.OutOfRange if a value cannot be a month's use
     */
    public UUID type(UUID projectId, String name, YearMonth first, List<Double> kwh) {
        UUID branchId = projectAccess.require(projectId, May.EDIT_PROJECT);
        TypedUse typed = new TypedUse(first.toString(), kwh);
        UseChannel channel = MeterReadings.typed(name, rules(branchId), typed);
        UUID id = insert(
                new Brought(projectId, branchId, name, Kind.TYPED, false),
                typed,
                null,
                MeterReadings.summary(List.of(channel), List.of(), List.of()));
        write(projectId, "use.typed", "Use of %s typed for %d months from %s.".formatted(name, kwh.size(), first));
        workAnew(projectId, branchId);
        return id;
    }

    /** @throws EditedMeanwhile if somebody was faster */
    public void correct(UUID meterId, long version, String name, TypedUse typed) {
        UseMeter before = editable(meterId);
        if (before.kind() != Kind.TYPED) {
            throw new NotFound();
        }
        UseChannel channel = MeterReadings.typed(name, rules(before.branchId()), typed);
        UseMeter.Reading reading = MeterReadings.summary(List.of(channel), List.of(), List.of());
        if (!meters.correct(meterId, version, name, typed, reading)) {
            throw new EditedMeanwhile(version, before.version());
        }
        write(before.projectId(), "use.corrected", "Use of %s corrected.".formatted(name));
        workAnew(before.projectId(), before.branchId());
    }

    /**
     * A table or a Green Button file; it counts once somebody has looked at it and said so.
     *
     * @param wattHours the person says that a file without a unit is in Wh
     */
    public Bringing bring(UUID projectId, String name, Upload upload, boolean wattHours) {
        UUID branchId = projectAccess.require(projectId, May.EDIT_PROJECT);
        String text = FileText.of(upload.bytes());
        Kind kind = MeterReadings.kindOf(text);
        List<List<String>> preview = kind == Kind.TABLE ? MeterReadings.preview(upload.bytes()) : List.of();
        UseReading read = MeterReadings.read(kind, name, rules(branchId), text, wattHours);
        if (read.isRefused()) {
            return new Bringing.Refused(read.findings().get(0).sentence(), preview);
        }
        Brought brought = new Brought(projectId, branchId, name, kind, wattHours);
        return keep(brought, upload, MeterReadings.summary(read.channels(), read.findings(), preview));
    }

    private record Brought(UUID projectId, UUID branchId, String name, Kind kind, boolean wattHours) {}

    private Bringing keep(Brought brought, Upload upload, UseMeter.Reading reading) {
        String ending = brought.kind == Kind.GREEN_BUTTON ? ".xml" : ".csv";
        boolean ends = upload.name().toLowerCase(java.util.Locale.ROOT).endsWith(ending);
        Upload named =
                new Upload(ends ? upload.name() : upload.name() + ending, upload.bytes(), "Use of " + brought.name);
        Keeping keeping = evidence.keep(brought.branchId, brought.projectId, named, access.actor());
        if (keeping instanceof Keeping.Refused no) {
            return new Bringing.Refused(no.sentence(), reading.preview());
        }
        UUID id = insert(brought, null, ((Keeping.Kept) keeping).evidence().id(), reading);
        String what = firstUp(brought.kind.words());
        write(brought.projectId, "use.brought", "%s brought for the use of %s.".formatted(what, brought.name));
        return new Bringing.Kept(id);
    }

    private UUID insert(Brought brought, @Nullable TypedUse typed, @Nullable UUID file, UseMeter.Reading reading) {
        UUID id = Ids.next();
        meters.insert(new UseMeter(
                id,
                brought.branchId,
                brought.projectId,
                0,
                brought.name,
                brought.kind,
                typed,
                file,
                brought.wattHours,
                typed != null,
                reading,
                clock.instant(),
                access.actor().name()));
        return id;
    }

    private static String firstUp(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    @Transactional(readOnly = true)
    public List<UseMeter> meters(UUID projectId) {
        projectAccess.require(projectId, May.SEE_ESTIMATE);
        return meters.ofProject(projectId);
    }

    /** @throws NotFound if it is not there for the person who asks */
    @Transactional(readOnly = true)
    public UseMeter one(UUID meterId) {
        UseMeter meter = meters.find(meterId).orElseThrow(NotFound::new);
        projectAccess.require(meter.projectId(), May.SEE_ESTIMATE);
        return meter;
    }

    /** Whether it counts as use of the site. @return the meter as it was */
    public UseMeter count(UUID meterId, boolean counted) {
        UseMeter meter = editable(meterId);
        if (meter.counted() != counted) {
            meters.count(meterId, counted);
            String words = counted ? "Use of %s counts." : "Use of %s is left out.";
            write(meter.projectId(), counted ? "use.counted" : "use.left-out", words.formatted(meter.name()));
            workAnew(meter.projectId(), meter.branchId());
        }
        return meter;
    }

    /** Takes the meter away; its file stays among the papers. @return the meter as it was */
    public UseMeter end(UUID meterId) {
        UseMeter meter = editable(meterId);
        meters.end(meterId, clock.instant());
        write(meter.projectId(), "use.removed", "Use of %s taken away.".formatted(meter.name()));
        workAnew(meter.projectId(), meter.branchId());
        return meter;
    }

    public UseMeter restore(UUID meterId) {
        UseMeter meter = editable(meterId);
        meters.end(meterId, null);
        write(meter.projectId(), "use.restored", "Use of %s put back.".formatted(meter.name()));
        workAnew(meter.projectId(), meter.branchId());
        return meter;
    }

    private UseMeter editable(UUID meterId) {
        UseMeter meter = meters.find(meterId).orElseThrow(NotFound::new);
        projectAccess.require(meter.projectId(), May.EDIT_PROJECT);
        return meter;
    }

    private ZoneRules rules(UUID branchId) {
        return settings.facts(branchId).zone().getRules();
    }

    private void write(UUID projectId, String kind, String sentence) {
        journal.append(JournalEvent.of(projectId, kind, sentence, Map.of()), access.actor(), clock.instant());
    }

    private void workAnew(UUID projectId, UUID branchId) {
        sum(projectId, branchId);
        gates.lookAgain(projectId);
    }

    private void sum(UUID projectId, UUID branchId) {
        ZoneRules rules = rules(branchId);
        List<UseChannel> channels = new ArrayList<>();
        List<String> said = new ArrayList<>();
        for (UseMeter meter : meters.ofProject(projectId)) {
            if (meter.counted()) {
                channels.addAll(readings.channels(meter, rules));
                meter.reading().said().forEach(sentence -> said.add(meter.name() + ": " + sentence));
            }
        }
        if (channels.isEmpty()) {
            years.drop(projectId);
            return;
        }
        Optional<UseHours> hours = UseHours.of(channels);
        UseYears.SiteUse use = together(UseYear.of(channels), said, hours.isPresent());
        years.keep(projectId, branchId, use, hours.map(UseHours::kwh).orElse(null));
    }

    private static UseYears.SiteUse together(UseYear year, List<String> said, boolean hourly) {
        year.findings().stream().map(UseFinding::sentence).forEach(said::add);
        return new UseYears.SiteUse(
                year.months().stream().map(month -> month.kwh().orElse(null)).toList(),
                year.months().stream().map(UseYear.Month::knownShare).toList(),
                said,
                hourly);
    }
}
