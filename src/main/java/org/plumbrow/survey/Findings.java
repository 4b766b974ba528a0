package org.plumbrow.survey;

import java.util.EnumSet;
import java.util.Set;
import org.plumbrow.project.gate.AnswerKind;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.survey.SurveyLook.Seen;

/** How the findings of a survey are said. */
final class Findings {

    private Findings() {}

    static Finding notRead(String what, SurveyPart part) {
        return notRead(what, part, "is");
    }

    static Finding notRead(String what, SurveyPart part, String verb) {
        return new Finding.CannotTell(
                what + " " + verb + " not read yet.", "It is written on the survey’s page “" + part.words() + "”.");
    }

    static Finding read(String sentence) {
        return new Finding.Recorded(sentence, Set.of(AnswerKind.READING));
    }

    /** A reading, with the photo where it is there. */
    static Finding read(String sentence, Seen seen, PhotoItem... photos) {
        Set<AnswerKind> holds = EnumSet.of(AnswerKind.READING);
        boolean all = true;
        for (PhotoItem photo : photos) {
            all &= seen.has(photo);
        }
        if (all) {
            holds.add(AnswerKind.PHOTO);
        }
        return new Finding.Recorded(sentence, holds);
    }

    static String figure(double figure) {
        return SurveyField.plain(figure);
    }
}
