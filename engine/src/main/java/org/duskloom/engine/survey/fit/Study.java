package org.duskloom.engine.survey.fit;

import java.util.ArrayList;
import java.util.List;
import org.duskloom.engine.display.PlacedProp;
import org.duskloom.engine.display.Placement;
import org.duskloom.engine.survey.Verdict;
import org.duskloom.engine.survey.WiringKind;

/** One measured prop and what was found out about it so far. */
final class Study {
    private final Subject subject;
    private final Criterion criterion;
    private final Selection selection;
    private final boolean isLimited;
    private PlacedProp host;
    private List<Candidate> chosen;
    private Verdict verdict;

    Study(Subject subject, Criterion criterion) {
        this.subject = subject;
        this.criterion = criterion;
        subject.leaveOutSlip(criterion);
        this.selection = new Selection(subject, criterion);
        this.isLimited =
                Shortages.rankOfMeasured(subject, criterion.sigma()) < Shortages.rankOfAll(subject, criterion.sigma());
        chooseAtItsPlace();
    }

    Subject subject() {
        return subject;
    }

    double sigma() {
        return criterion.sigma();
    }

    Verdict verdict() {
        return verdict;
    }

    /** Whether the measured pixels lie so that they cannot tell a turn from a mirror image. */
    boolean isLimited() {
        return isLimited;
    }

    /** The readings that are tenable, the preferred one first; the best one even if none is. */
    List<Candidate> chosen() {
        return chosen;
    }

    Candidate preferred() {
        return chosen.get(0);
    }

    /** The prop whose place this one takes; itself if it takes none. */
    PlacedProp host() {
        return host;
    }

    /** The readings that also the place of another prop explains; nothing if that is no better than any other place. */
    List<Candidate> chooseAt(PlacedProp other) {
        List<Candidate> all = new ArrayList<>(allowed(subject.candidates()));
        for (Placement placement : at(other, subject.prop())) {
            Stance stance = new Stance(subject.prop(), placement, subject.dimensions());
            subject.candidates(stance, criterion.slack()).stream()
                    .filter(candidate -> candidate.form().move() == Move.STAYS)
                    .filter(candidate -> !isLimited || candidate.form().equals(Form.AS_DESCRIBED))
                    .map(Candidate::takingAPlace)
                    .forEach(all::add);
        }
        List<Candidate> tenable = selection.choose(all);
        boolean explains = !tenable.isEmpty()
                && tenable.get(0).form().move() == Move.TAKES_A_PLACE
                && selection.fits(tenable.get(0));
        return explains ? tenable : List.of();
    }

    /** It is true that it hangs in the place of another prop. */
    void settleAt(PlacedProp other, List<Candidate> readings) {
        host = other;
        chosen = readings;
        verdict = Verdict.DIFFERENT;
    }

    private void chooseAtItsPlace() {
        host = subject.prop();
        if (subject.isMuddled()) {
            chosen = List.of(asDescribed());
            verdict = Verdict.UNDETERMINED;
            return;
        }
        List<Candidate> quick = selection.choose(allowed(subject.candidates()));
        if (!quick.isEmpty() && isAsDescribed(quick.get(0)) && selection.fits(quick.get(0))) {
            chosen = quick;
            verdict = Verdict.AS_DESCRIBED;
            return;
        }
        if (!isLimited) {
            subject.search(criterion.slack());
        }
        settle(selection.choose(allowed(subject.candidates())));
    }

    private void settle(List<Candidate> tenable) {
        boolean fits = !tenable.isEmpty() && selection.fits(tenable.get(0));
        if (fits) {
            chosen = tenable;
            verdict = isAsDescribed(tenable.get(0)) ? Verdict.AS_DESCRIBED : Verdict.DIFFERENT;
            return;
        }
        boolean tooFew = isLimited || tenable.isEmpty();
        verdict = tooFew ? Verdict.UNDETERMINED : Verdict.UNEXPLAINED;
        chosen = tooFew ? List.of(asDescribed()) : tenable;
    }

    Candidate asDescribed() {
        return subject.candidates().stream()
                .filter(Study::isAsDescribed)
                .findFirst()
                .orElseThrow();
    }

    private static boolean isAsDescribed(Candidate candidate) {
        return candidate.form().equals(Form.AS_DESCRIBED);
    }

    /** Pixels on a line cannot tell much: whether they hang where they should, or all moved the same way. */
    private List<Candidate> allowed(List<Candidate> candidates) {
        if (!isLimited) {
            return candidates;
        }
        return candidates.stream()
                .filter(candidate -> isAsDescribed(candidate) || isPlainMove(candidate.form()))
                .toList();
    }

    private boolean isPlainMove(Form form) {
        return subject.measured().count() > 1
                && form.equals(new Form(Move.FREE, Turn.STAYS, false, false, WiringKind.AS_DESCRIBED));
    }

    /** At its place, turned as it is described itself, or as the other one is if that differs. */
    private static List<Placement> at(PlacedProp host, PlacedProp guest) {
        Placement there = host.placement();
        Placement own = guest.placement();
        Placement kept = at(there, own, own);
        Placement taken = at(there, own, there);
        return kept.equals(taken) ? List.of(kept) : List.of(kept, taken);
    }

    private static Placement at(Placement there, Placement own, Placement turned) {
        return new Placement(
                own.mirror(),
                own.scale(),
                turned.turnDegrees(),
                turned.tiltDegrees(),
                turned.yawDegrees(),
                there.x(),
                there.y(),
                there.z());
    }
}
