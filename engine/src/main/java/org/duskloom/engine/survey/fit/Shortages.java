package org.duskloom.engine.survey.fit;

import java.util.stream.IntStream;
import org.duskloom.engine.map.Positions;
import org.duskloom.engine.survey.MeasuredProp;
import org.duskloom.engine.survey.Shortage;

/** Finds out what the measured pixels of a prop cannot tell, and which further one would. */
final class Shortages {
    private Shortages() {}

    static int rankOfMeasured(Subject subject, double sigma) {
        return Extent.rank(subject.stance().template(false), measured(subject), sigma);
    }

    static int rankOfAll(Subject subject, double sigma) {
        Positions template = subject.stance().template(false);
        return Extent.rank(template, IntStream.range(0, template.size()).toArray(), sigma);
    }

    /** What is missing, and the pixel that lies farthest from the point, the line or the plane of those that were measured. */
    static Shortage of(Subject subject, double sigma) {
        int rank = rankOfMeasured(subject, sigma);
        boolean full = rank == rankOfAll(subject, sigma);
        Shortage.Kind kind = full ? Shortage.Kind.TOO_FEW : Shortage.Kind.values()[rank];
        return new Shortage(kind, farthest(subject, full ? 0 : rank));
    }

    private static int farthest(Subject subject, int rank) {
        Positions template = subject.stance().template(false);
        Moments moments = new Moments();
        boolean[] known = new boolean[template.size()];
        for (int pixel : measured(subject)) {
            known[pixel] = true;
            double x = template.x(pixel);
            double y = template.y(pixel);
            double z = template.z(pixel);
            moments.add(x, y, z, x, y, z);
        }
        double[] mean = moments.fromMean();
        Linear3 across = across(Svd3.of(moments.aboutMeans().cross()), rank);
        int farthest = 0;
        double most = -1;
        for (int i = 0; i < template.size(); i++) {
            double x = template.x(i) - mean[0];
            double y = template.y(i) - mean[1];
            double z = template.z(i) - mean[2];
            double square = across.x(x, y, z) * x + across.y(x, y, z) * y + across.z(x, y, z) * z;
            if (!known[i] && square > most) {
                most = square;
                farthest = i;
            }
        }
        return farthest;
    }

    /** The projection onto what is at right angles to the first directions of a spread. */
    private static Linear3 across(Svd3 spread, int rank) {
        Linear3 u = spread.u();
        return u.columnsTimes(rank > 0 ? 0 : 1, rank > 1 ? 0 : 1, rank > 2 ? 0 : 1)
                .times(u.transposed());
    }

    private static int[] measured(Subject subject) {
        MeasuredProp measured = subject.measured();
        return IntStream.range(0, measured.count()).map(measured::pixel).toArray();
    }
}
