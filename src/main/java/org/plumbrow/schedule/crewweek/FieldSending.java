package org.plumbrow.schedule.crewweek;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.plumbrow.evidence.Upload;
import org.plumbrow.project.PhoneReply;
import org.plumbrow.project.PhoneSending;
import org.plumbrow.project.PhoneSendings;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.WrittenDown;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Takes what a crew's phone has kept. Each sending counts once, also when the answer to it was lost. */
@Service
@Transactional
class FieldSending {

    private final DailyReports reports;
    private final DayOne dayOne;
    private final DayOneSayings sayings;
    private final PhoneSendings sendings;
    private final ProjectAccess projectAccess;

    FieldSending(
            DailyReports reports,
            DayOne dayOne,
            DayOneSayings sayings,
            PhoneSendings sendings,
            ProjectAccess projectAccess) {
        this.reports = reports;
        this.dayOne = dayOne;
        this.sayings = sayings;
        this.sendings = sendings;
        this.projectAccess = projectAccess;
    }

    /** @throws EditedMeanwhile if somebody was faster; nothing is stored then, and the same id may come again */
    PhoneReply report(Optional<PhoneSending> sending, ReportSheet sheet, DailyReport report, WrittenDown when) {
        return once(
                sending,
                sheet.project().id(),
                "report/" + sheet.day(),
                () -> reports.save(sheet, report, when)
                        .map(FieldSending::refused)
                        .orElseGet(() -> PhoneReply.stored(report.version() + 1, 0)));
    }

    PhoneReply photo(Optional<PhoneSending> sending, ReportSheet sheet, Upload photo) {
        return once(
                sending,
                sheet.project().id(),
                "report/" + sheet.day() + "/photo",
                () -> reports.addPhoto(sheet, photo)
                        .map(FieldSending::refused)
                        .orElseGet(() -> PhoneReply.stored(0, 0)));
    }

    PhoneReply tick(Optional<PhoneSending> sending, UUID projectId, DayOneStep step, WrittenDown when) {
        return once(sending, projectId, "day-one/" + step.path(), () -> {
            DayOne.Answer answer = dayOne.tick(projectId, step, when);
            return answer.made() ? PhoneReply.stored(0, 0) : refused(Refusal.ofForm(sayings.againstTick(step, answer)));
        });
    }

    PhoneReply takeBack(Optional<PhoneSending> sending, UUID projectId, DayOneStep step, long seen) {
        return once(sending, projectId, "day-one/" + step.path() + "/take-back", () -> {
            DayOne.Answer answer = dayOne.takeBack(projectId, step, seen);
            return answer.made()
                    ? PhoneReply.stored(0, 0)
                    : refused(Refusal.ofForm(sayings.againstTakingBack(step, answer)));
        });
    }

    private PhoneReply once(Optional<PhoneSending> sending, UUID projectId, String what, Supplier<PhoneReply> store) {
        UUID branchId = projectAccess.require(projectId, May.RECORD_PROGRESS);
        return sendings.known(sending, projectId).orElseGet(() -> {
            PhoneReply reply = store.get();
            if (reply.hasStored()) {
                sendings.took(sending.orElseThrow(), branchId, projectId, what, reply.version());
            }
            return reply;
        });
    }

    private static PhoneReply refused(Refusal refusal) {
        return PhoneReply.refused(List.of(refusal));
    }
}
